// The exploded order, one way or the other.
import { useState } from "preact/hooks";
import { Exploded } from "../../parts/exploded";
import type { JobPlan } from "../../types";
import { t } from "../../words";

export function Order({ plan, backFirst = false }: { plan: JobPlan; backFirst?: boolean }) {
  const [goesBack, setGoesBack] = useState(backFirst);
  if (plan.take_off.length === 0) return <p class="soft">{t("order-nothing")}</p>;
  const way = (back: boolean, words: string, test: string) => (
    <button type="button" class="way" aria-pressed={goesBack === back} onClick={() => setGoesBack(back)} data-test={test}>
      {words}
    </button>
  );
  return (
    <div class="order">
      <div class="ways" role="group" aria-label={t("order")}>
        {way(false, t("order-off"), "order-off")}
        {way(true, t("order-back"), "order-back")}
      </div>
      <Exploded
        items={goesBack ? plan.refit : plan.take_off}
        words={t(goesBack ? "order-back" : "order-off")}
      />
    </div>
  );
}

// What a job brings with it besides its order.
import type { JobPlan } from "../../types";
import { t } from "../../words";

export function Consequences({ plan }: { plan: JobPlan }) {
  return (
    <>
      <Said id="renew" words={t("plan-renew")} rows={plan.renew} />
      <Said id="count" words={t("plan-count")} rows={plan.count_tools} />
      <Said id="independent" words={t("plan-independent")} rows={plan.independent} painted />
      <Said id="later" words={t("plan-later")} rows={plan.follow_ups} painted />
    </>
  );
}

function Said({ id, words, rows, painted }: { id: string; words: string; rows: string[]; painted?: boolean }) {
  if (rows.length === 0) return null;
  return (
    <section aria-labelledby={`plan-${id}`} class={painted ? "painted" : ""} data-test={`plan-${id}`}>
      <h2 id={`plan-${id}`}>{words}</h2>
      <ul class="plain-list">
        {rows.map((row) => (
          <li key={row}>{row}</li>
        ))}
      </ul>
    </section>
  );
}

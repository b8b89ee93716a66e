// What to do with a machine: walk round it, log a flight, work on it, go on with the work.
import { to } from "../route";
import type { MachinePage } from "../types";
import { begun } from "../walking";
import { t } from "../words";
import { JobDeeds } from "./job/open-job";

/** What the thumb reaches: the open work first, else the lists; after landing and after working on it. */
export function Deeds({ page }: { page: MachinePage }) {
  const { card, job } = page;
  return (
    <>
      {job ? <JobDeeds page={page} /> : <Lists page={page} />}
      <AfterFlight machine={card.id} work={!job} />
    </>
  );
}

export function AfterFlight({ machine, work = true }: { machine: string; work?: boolean }) {
  return (
    <nav class="beside tight" aria-label={t("after-flight")}>
      <a class="button" href={to("machine", machine, "log")} data-test="log">{t("log")}</a>
      {work && <a class="button" href={to("machine", machine, "work")} data-test="work">{t("work-title")}</a>}
    </nav>
  );
}

function Lists({ page: { card, occasions } }: { page: MachinePage }) {
  const walk = begun(card.walk);
  return (
    <nav class="beside tight" aria-label={t("machine-lists")}>
      {occasions.map((occasion, index) => {
        const here = walk?.occasion === occasion.id ? walk : null;
        return (
          <a
            key={occasion.id}
            class={`button ${index === 0 ? "go" : ""}`}
            href={to("walk", card.id, occasion.id, ...(here ? ["on"] : []))}
            data-test={`walk-${occasion.id}`}
          >
            {here
              ? t("machine-walk-on", { list: occasion.words, done: here.done, of: here.of })
              : t("machine-walk", { list: occasion.words })}
          </a>
        );
      })}
    </nav>
  );
}

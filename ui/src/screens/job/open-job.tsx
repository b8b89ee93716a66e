// The work that isn't released yet: what it still lacks, and the next thing to do about it.
import { to } from "../../route";
import type { MachinePage } from "../../types";
import { begun } from "../../walking";
import { t } from "../../words";
import { Order } from "./order";
import { Consequences } from "./consequences";

/** The list that is walked after work. */
export const AFTER_SERVICE = "after-service";

export function OpenJob({ page }: { page: MachinePage }) {
  const { job } = page;
  if (!job) return null;
  return (
    <section class="painted open-job" aria-labelledby="job" data-test="job" data-ready={job.ready}>
      <h2 id="job">{t("job-open", { title: job.title })}</h2>
      <p class="soft">{job.since}</p>
      {job.ready ? (
        <p class="strong">{t("job-ready")}</p>
      ) : (
        <ul class="plain-list" aria-label={t("job-lacks")} data-test="job-lacks">
          {job.lacks.map((lack) => (
            <li key={lack}>{lack}</li>
          ))}
        </ul>
      )}
      {job.plan && (
        <details>
          <summary data-test="job-plan">{t("job-plan")}</summary>
          <Order plan={job.plan} backFirst />
          <Consequences plan={job.plan} />
        </details>
      )}
    </section>
  );
}

/** The ways on from open work; what comes next stands out. */
export function JobDeeds({ page }: { page: MachinePage }) {
  const { card, job } = page;
  if (!job) return null;
  const walk = begun(card.walk);
  const here = walk?.occasion === AFTER_SERVICE ? walk : null;
  const looking = job.inspected && job.independent.length > 0;
  const next = job.ready ? "release" : job.inspected && !here ? "second" : "walk";
  return (
    <nav class="beside tight" aria-label={t("job-deeds")}>
      {job.ready && (
        <a class="button go whole-row" href={to("machine", card.id, "release")} data-test="job-release">
          {t("job-release")}
        </a>
      )}
      {looking && (
        <a class={`button ${next === "second" ? "go" : ""}`} href={to("machine", card.id, "second")} data-test="job-second">
          {t("job-second")}
        </a>
      )}
      <a
        class={`button ${next === "walk" ? "go" : ""}`}
        href={to("walk", card.id, AFTER_SERVICE, ...(here ? ["on"] : []))}
        data-test={`walk-${AFTER_SERVICE}`}
      >
        {here ? t("job-walk-on", { done: here.done, of: here.of }) : t(job.inspected ? "job-walk-again" : "job-walk")}
      </a>
    </nav>
  );
}

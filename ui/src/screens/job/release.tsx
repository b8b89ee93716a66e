// Signing that the inspections of the open work are complete.
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

export function Release({ machine }: { machine: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="release" fault={fault} again={again} back={back} />;
  const { job } = value;
  if (!job) return <Page screen="release" title={t("release-none")} back={back}><p>{t("release-none-hint")}</p></Page>;
  return (
    <Page screen="release" title={t("release-title", { machine: value.card.name })} over={job.title} back={back}>
      {job.lacks.length > 0 && (
        <section class="painted" aria-labelledby="lacks">
          <h2 id="lacks">{t("job-lacks")}</h2>
          <ul class="plain-list">
            {job.lacks.map((lack) => (
              <li key={lack}>{lack}</li>
            ))}
          </ul>
        </section>
      )}
      <p>{t("release-says")}</p>
      <p class="soft">{t("release-means")}</p>
      {job.plan && job.plan.count_tools.length > 0 && (
        <section aria-labelledby="count">
          <h2 id="count">{t("plan-count")}</h2>
          <ul class="plain-list">
            {job.plan.count_tools.map((tool) => (
              <li key={tool}>{tool}</li>
            ))}
          </ul>
        </section>
      )}
      <SignedForm
        deed={t("release-sign")}
        onSign={async (pin) => {
          await call("job-release", { machine, pin });
          turnTo("machine", machine, "verdict");
        }}
      >
        <p class="soft">{t("release-first-flight")}</p>
      </SignedForm>
    </Page>
  );
}

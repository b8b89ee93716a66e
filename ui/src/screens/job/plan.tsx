// What the work means, before it is signed: the order, what is renewed, what must be looked at.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Cautions } from "../../parts/cautions";
import { TextArea } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { chosenDraft } from "./choose";
import { Consequences } from "./consequences";
import { Order } from "./order";

export function PlanJobs({ machine }: { machine: string }) {
  const [jobs, , done] = useDraft<string[]>(chosenDraft(machine), []);
  const [note, setNote, noted] = useDraft(`work/${machine}/note`, "");
  const choices = useLoad("job-choices", { machine });
  const { value, fault, again } = useLoad("job-plan", { machine, jobs });
  const back = { href: to("machine", machine, "work"), words: t("work-back") };
  if (!value) return <Waiting screen="plan" fault={fault} again={again} back={back} />;
  const title = jobs.map((id) => choices.value?.find((job) => job.id === id)?.words ?? id).join(", ");
  return (
    <Page screen="plan" title={title} over={t("plan-over", { count: value.points })} back={back} picture={<Order plan={value} />}>
      <Consequences plan={value} />
      <Cautions />
      <SignedForm
        deed={t("plan-sign")}
        onSign={async (pin) => {
          await call("job-begin", { machine, jobs, note, pin });
          done();
          noted();
          turnTo("machine", machine);
        }}
      >
        <TextArea words={t("plan-note")} hint={t("plan-note-hint")} value={note} onValue={setNote} test="work-note" rows={3} />
        <p class="soft">{t("plan-means")}</p>
      </SignedForm>
    </Page>
  );
}

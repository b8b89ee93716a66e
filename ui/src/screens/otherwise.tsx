// A later word on a signed finding: a record of its own; what was signed stays.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useLoad } from "../hooks";
import { TextArea } from "../parts/field";
import { Page, Waiting } from "../parts/page";
import { MeaningShape, meaningWords } from "../parts/shape";
import { to, turnTo } from "../route";
import { t } from "../words";
import { SignedForm } from "./signed-form";

export function Otherwise({ digest, point }: { digest: string; point: string }) {
  const { value, fault, again } = useLoad("record", { digest });
  const [draft, setDraft, done] = useDraft(`otherwise/${digest}/${point}`, { answer: "", reason: "" });
  const back = { href: to("record", digest, point), words: t("to-record") };
  if (!value) return <Waiting screen="otherwise" fault={fault} again={again} back={back} />;
  const finding = value.findings.find((one) => one.point === point);
  if (!finding)
    return <Page screen="otherwise" title={t("otherwise")} back={back}><p>{t("otherwise-unknown")}</p></Page>;
  return (
    <Page screen="otherwise" title={finding.title} over={t("otherwise")} back={back}>
      <p>{t("otherwise-said", { words: finding.words, by: value.by, when: value.when })}</p>
      <SignedForm
        deed={t("otherwise-sign")}
        onSign={async (pin) => {
          await call("correct", { record: digest, point, ...draft, pin });
          done();
          turnTo("record", digest, point);
        }}
      >
        <fieldset>
          <legend>{t("otherwise-answer")}</legend>
          {finding.choices.map((choice) => (
            <label key={choice.id} class="choice">
              <input
                type="radio"
                name="answer"
                checked={draft.answer === choice.id}
                onChange={() => setDraft({ ...draft, answer: choice.id })}
                data-test={`choice-${choice.id}`}
              />
              <MeaningShape means={choice.means} />
              <span class="grow">
                {choice.words}
                <span class="unseen">, {meaningWords(choice.means)}</span>
              </span>
            </label>
          ))}
        </fieldset>
        <TextArea words={t("otherwise-reason")} value={draft.reason} onValue={(reason) => setDraft({ ...draft, reason })} test="reason" rows={3} />
        <p class="soft">{t("otherwise-means")}</p>
      </SignedForm>
    </Page>
  );
}

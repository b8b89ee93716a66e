// Joining face to face: this device's code is shown, the answer to it is taken in and signed.
import { layReady, useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Code } from "../../parts/code";
import { Page, Waiting } from "../../parts/page";
import { Reader } from "../../parts/reader";
import { to, turnTo } from "../../route";
import { useSchool } from "../../school";
import type { CodeOut } from "../../types";
import { kindOf } from "../../kinds";
import { t } from "../../words";
import { OwnCode } from "./spoken";
import { TakeAnswer } from "./take-answer";

export function Join() {
  const own = useSchool();
  const code = useLoad("school-code", {});
  const [answer, setAnswer] = useDraft("school/answer", "");
  const back = { href: to("school"), words: own.value?.school?.name ?? t("school") };
  if (!own.value || !code.value)
    return <Waiting screen="school-join" fault={own.fault ?? code.fault} again={() => (own.again(), code.again())} back={back} />;
  const member = own.value.school !== null;
  if (answer) return <TakeAnswer answer={answer} back={back} onAgain={() => setAnswer("")} onBack={toDevice} />;
  return (
    <Page
      screen="school-join"
      title={t(member ? "school-show-code" : "join-by-code")}
      back={back}
      picture={<Code code={code.value} words={t("school-code")} />}
    >
      <OwnCode code={own.value.code} />
      <p>{t(member ? "school-show-code-what" : "join-show")}</p>
      {!member && (
        <section aria-labelledby="answer">
          <h2 id="answer">{t("join-answer")}</h2>
          <p class="soft">{t("join-answer-what")}</p>
          <Reader name="school/answer" deed={t("join-take")} onText={async (text) => setAnswer(answered(text))} />
        </section>
      )}
    </Page>
  );
}

/** A device that began as another one's goes on where it shows that one its own word. */
function toDevice(code: CodeOut) {
  layReady("device/back", code);
  turnTo("school", "device");
}

/** The text of an answer; anything else is told at once, not after the PIN. */
export function answered(text: string): string {
  if (kindOf(text) !== "answer") throw { kind: "code-other", message: t("join-no-answer"), hint: t("join-no-answer-hint") };
  return text;
}

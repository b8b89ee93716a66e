// An answer was taken in: what signing it means, and the signature.
import { call } from "../../calls";
import { useDraft, useKept } from "../../drafts";
import { Page } from "../../parts/page";
import { turnTo } from "../../route";
import { heard } from "../../school";
import type { CodeOut } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

interface TakeAnswerProps {
  answer: string;
  back: { href: string; words: string };
  onAgain: () => void;
  /** What this device shows its person's first one in turn. */
  onBack: (code: CodeOut) => void;
}

/** What the first device of this person showed at this one's first start. */
export const NO_FIRST = { text: "" };

export function TakeAnswer({ answer, back, onAgain, onBack }: TakeAnswerProps) {
  const [, , done] = useDraft("school/answer", "");
  const [first, , doneFirst] = useKept("device/first", NO_FIRST);
  const [mine, setMine, doneMine] = useDraft<CodeOut | null>("device/mine", null);
  return (
    <Page screen="school-answer" title={t("join-sign-title")} back={back}>
      <p>{t("join-sign-what")}</p>
      <SignedForm
        deed={t("join-sign")}
        onSign={async (pin) => {
          // A key is ended only by a device that it vouched for itself: so this one vouches for the first,
          // before it joins: its word then is about the two devices only. Once, also where joining fails.
          const code = mine ?? (first.text ? await call("school-vouch", { text: first.text, pin }) : null);
          setMine(code);
          heard(await call("school-join", { text: answer, pin }));
          done();
          if (!code) return turnTo("school");
          doneFirst();
          doneMine();
          onBack(code);
        }}
      >
        <p class="soft">{t("join-means")}</p>
      </SignedForm>
      <button type="button" class="as-link" onClick={onAgain} data-test="answer-anew">{t("join-other-answer")}</button>
    </Page>
  );
}

// What the school's board asks this device to sign: a sign-in, or something prepared there.
import { useEffect } from "preact/hooks";
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { lookAtSchool } from "../../school";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { DeskDraft } from "./draft";

const back = () => ({ href: "#/", words: t("to-machines") });

export function Desk() {
  const [text, , forget] = useDraft("desk/text", "");
  const [told, tell] = useDraft("desk/told", "");
  // Without a code there is nothing to be asked here.
  useEffect(() => {
    if (!text && !told) turnTo("code");
  }, []);
  if (told) return <Told words={told} onAnew={() => tell("")} />;
  const done = async (words: string) => {
    forget();
    tell(words);
    await lookAtSchool();
  };
  return text ? <Opened text={text} onDone={done} /> : null;
}

function Opened({ text, onDone }: { text: string; onDone: (words: string) => Promise<void> }) {
  const { value, fault, again } = useLoad("desk-open", { text });
  if (!value) return <Waiting screen="desk" fault={fault} again={again} back={{ href: to("code"), words: t("code-open") }} />;
  if (value.kind === "draft") return <DeskDraft text={text} back={back()} onDone={() => onDone(t("draft-signed"))} />;
  return (
    <Page screen="desk" title={t("desk-sign-in-title")} over={value.school} back={back()}>
      <p>{value.words}</p>
      <p class="soft">
        {t("desk-address")} <span class="mono">{value.address}</span>
      </p>
      <SignedForm
        deed={t("desk-sign-in")}
        onSign={async (pin) => {
          await call("desk-confirm", { text, pin });
          await onDone(t("desk-signed-in"));
        }}
      >
        <p class="soft">{t("desk-means")}</p>
      </SignedForm>
    </Page>
  );
}

function Told({ words, onAnew }: { words: string; onAnew: () => void }) {
  return (
    <Page screen="desk-done" title={words} back={back()}>
      <a class="button" href={to("code")} onClick={onAnew} data-test="desk-anew">{t("code-open-another")}</a>
    </Page>
  );
}

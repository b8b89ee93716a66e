// Checking somebody's file with nothing but the file.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { TextArea } from "../parts/field";
import { Page } from "../parts/page";
import type { VerifyView } from "../types";
import { t } from "../words";
import { TakeIn } from "./take-in";
import { VerifyResult } from "./verify-result";

export function Verify() {
  const [text, setText] = useDraft("verify/text", "");
  const [result, setResult] = useDraft<VerifyView | null>("verify/result", null);
  const { busy, fault, act } = useAct();

  const check = (wanted: string) =>
    act(async () => {
      setResult(null);
      setResult(await call("verify", { text: wanted }));
    });
  const choose = async (file: File | undefined) => {
    if (!file) return;
    const read = await file.text();
    setText(read);
    void check(read);
  };

  return (
    <Page screen="verify" title={t("verify-title")} back={{ href: "#/", words: t("to-machines") }}>
      <p>{t("verify-what")}</p>
      <label class="button file">
        {t("verify-choose")}
        <input
          type="file"
          class="unseen"
          onChange={(event) => {
            void choose(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
          data-test="verify-file"
        />
      </label>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void check(text);
        }}
      >
        <TextArea words={t("verify-paste")} value={text} onValue={setText} test="verify-text" rows={4} />
        <FaultNote fault={fault} />
        <button type="submit" class="go" aria-disabled={busy} data-test="verify">
          {t(busy ? "verify-busy" : "verify-check")}
        </button>
      </form>
      <div role="status">{result && <VerifyResult result={result} />}</div>
      {result && <TakeIn text={text} machines={result.machines} />}
    </Page>
  );
}

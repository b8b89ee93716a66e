// Taking in a code: by the camera where there is one, from a picture, or as pasted text.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { useDraft } from "../drafts";
import { base64Of } from "../files";
import { useAct } from "../hooks";
import { t } from "../words";
import { Camera } from "./camera";
import { FaultNote } from "./fault";
import { TextArea } from "./field";

interface ReaderProps {
  /** Keeps what was pasted apart from other screens'. */
  name: string;
  /** The words on the button under the pasted text. */
  deed: string;
  /** Takes the text; what it throws is shown. */
  onText: (text: string) => Promise<void>;
}

export function Reader({ name, deed, onText }: ReaderProps) {
  const [text, setText, done] = useDraft(`reader/${name}`, "");
  const [looking, setLooking] = useState(false);
  const { busy, fault, act } = useAct();
  const take = (found: string) =>
    act(async () => {
      setLooking(false);
      await onText(found);
      done();
    });
  const picture = (file: File | undefined) =>
    file &&
    act(async () => {
      const found = await call("read-code", { data: await base64Of(file) });
      await onText(found);
      done();
    });
  const hasCamera = typeof navigator.mediaDevices?.getUserMedia === "function";
  return (
    <div class="reader">
      {looking && <Camera onText={take} onEnd={() => setLooking(false)} />}
      {hasCamera && !looking && (
        <button type="button" class="go" onClick={() => setLooking(true)} data-test="code-camera">
          {t("code-camera")}
        </button>
      )}
      <label class="button file">
        {t("code-picture")}
        <input
          type="file"
          class="unseen"
          accept="image/*"
          onChange={(event) => {
            void picture(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
          data-test="code-picture"
        />
      </label>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void take(text);
        }}
      >
        <TextArea words={t("code-text")} value={text} onValue={setText} test="code-text" rows={3} />
        <FaultNote fault={fault} />
        <button type="submit" aria-disabled={busy} data-test="code-take">
          {busy ? t("code-busy") : deed}
        </button>
      </form>
    </div>
  );
}

// A code to be read by another phone, and its text for when no camera reads it.
import { useState } from "preact/hooks";
import type { CodeOut } from "../types";
import { t } from "../words";

export function Code({ code, words }: { code: CodeOut; words: string }) {
  return (
    <div class="code">
      {code.svg ? (
        // As a picture, never as markup: what it holds came from records.
        <img src={`data:image/svg+xml;base64,${btoa(code.svg)}`} alt={words} data-test="code" />
      ) : (
        <p class="banner">{t("code-too-long")}</p>
      )}
      <CodeText text={code.text} />
    </div>
  );
}

function CodeText({ text }: { text: string }) {
  const [told, setTold] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setTold(t("code-copied"));
    } catch {
      setTold(t("code-not-copied"));
    }
  };
  // Sharing that the person breaks off is no fault.
  const share = () => navigator.share({ text }).catch(() => undefined);
  return (
    <div class="code-text">
      <div class="beside tight">
        <button type="button" onClick={copy} data-test="code-copy">{t("code-copy")}</button>
        {typeof navigator.share === "function" && (
          <button type="button" onClick={share} data-test="code-share">{t("code-share")}</button>
        )}
      </div>
      <p role="status" class="soft">{told}</p>
      <details>
        <summary data-test="code-as-text">{t("code-as-text")}</summary>
        <pre class="mono" tabIndex={0} data-test="code-out">{text}</pre>
      </details>
    </div>
  );
}

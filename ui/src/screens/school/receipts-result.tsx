// What came of checking receipts.
import { PaintMark } from "../../parts/mark";
import { StateShape } from "../../parts/shape";
import type { ReceiptsView } from "../../types";
import { t } from "../../words";

export function ReceiptsResult({ result }: { result: ReceiptsView }) {
  const state = result.good ? "fit" : "grounded";
  return (
    <div class="card" data-test="receipts-result" data-good={result.good}>
      <div class="sign">
        <StateShape state={state} size={40} />
        <PaintMark state={state} />
      </div>
      <p class="strong">{result.words}</p>
      <details>
        <summary>{t("truth-proof")}</summary>
        <dl>
          <dt>{t("truth-root")}</dt>
          <dd class="mono">{result.root}</dd>
        </dl>
        {result.checkpoint && <pre class="mono" tabIndex={0} aria-label={t("truth-signed")}>{result.checkpoint}</pre>}
      </details>
    </div>
  );
}

// Two devices compare what the server told each: it can fool one of them, not both at once.
import { useState } from "preact/hooks";
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { Code } from "../../parts/code";
import { FaultNote } from "../../parts/fault";
import { Page } from "../../parts/page";
import { Reader } from "../../parts/reader";
import { to } from "../../route";
import { lookAtSchool } from "../../school";
import type { ReceiptsView } from "../../types";
import { t } from "../../words";
import { ReceiptsResult } from "./receipts-result";

export function Compare() {
  const code = useLoad("checkpoint-code", {});
  const [result, setResult] = useState<ReceiptsView | null>(null);
  const compare = async (text: string) => {
    setResult(null);
    try {
      setResult(await call("checkpoint-compare", { text }));
    } finally {
      // A server that was caught is told on every screen.
      await lookAtSchool();
    }
  };
  return (
    <Page
      screen="compare"
      title={t("compare")}
      back={{ href: to("school", "server"), words: t("server-title") }}
      picture={code.value ? <Code code={code.value} words={t("compare-code")} /> : <FaultNote fault={code.fault} />}
    >
      <p>{t("compare-what")}</p>
      <div role="status">{result && <ReceiptsResult result={result} />}</div>
      <section aria-labelledby="theirs">
        <h2 id="theirs">{t("compare-theirs")}</h2>
        <Reader name="compare" deed={t("compare-take")} onText={compare} />
      </section>
    </Page>
  );
}

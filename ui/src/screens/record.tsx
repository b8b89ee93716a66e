// A record laid open: who signed what, when, and whether the signature holds.
import { useEffect } from "preact/hooks";
import { useLoad } from "../hooks";
import { Page, Waiting } from "../parts/page";
import { EmptyShape } from "../parts/shape";
import { to } from "../route";
import type { FindingView, RecordView } from "../types";
import { t } from "../words";
import { Finding } from "./finding";
import { RecordSheet } from "./papers";

export function RecordScreen({ digest, point }: { digest: string; point: string | undefined }) {
  const { value, fault, again } = useLoad("record", { digest });
  useEffect(() => {
    if (value && point) document.getElementById(`finding-${point}`)?.scrollIntoView({ block: "center" });
  }, [value, point]);
  if (!value) return <Waiting screen="record" fault={fault} again={again} />;
  const back = value.machine
    ? { href: to("machine", value.machine), words: t("to-machine") }
    : { href: "#/", words: t("to-machines") };
  return (
    <Page screen="record" title={value.words} over={value.kind} back={back} picture={<Facts record={value} />}>
      {value.interruptions.map((interruption) => (
        <p key={interruption} class="banner">{interruption}</p>
      ))}
      {byStation(value.findings).map(([station, findings]) => (
        <section key={station}>
          <h2>{station}</h2>
          <ul class="findings">
            {findings.map((finding) => (
              <Finding key={finding.point} digest={digest} finding={finding} marked={finding.point === point} />
            ))}
          </ul>
        </section>
      ))}
      {value.left.length > 0 && (
        <section aria-labelledby="left">
          <h2 id="left">{t("summary-left", { count: value.left.length })}</h2>
          <ul class="findings">
            {value.left.map((left) => (
              <li key={left.id} class="finding">
                <EmptyShape />
                <span class="grow">
                  {left.words} {left.must && <span class="block stop">{t("left-must")}</span>}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {value.sheet && <RecordSheet record={digest} />}
      <details>
        <summary>{t("record-payload")}</summary>
        <p class="soft">{t("record-payload-what")}</p>
        <pre class="mono" data-test="payload">{value.payload}</pre>
      </details>
    </Page>
  );
}

function Facts({ record }: { record: RecordView }) {
  return (
    <section class={`signature ${record.good ? "good" : "bad"}`} aria-label={t("record-signature")} data-test="signature" data-good={record.good}>
      <p class="headline">{record.signature}</p>
      <dl>
        <dt>{t("record-by")}</dt>
        <dd>{record.by}</dd>
        <dt>{t("record-when")}</dt>
        <dd>{record.when}</dd>
        <dt>{t("record-device")}</dt>
        <dd class="mono">{record.device}</dd>
        <dt>{t("record-seq")}</dt>
        <dd>{record.seq}</dd>
        <dt>{t("record-digest")}</dt>
        <dd class="mono" data-test="digest">{record.digest}</dd>
      </dl>
    </section>
  );
}

function byStation(findings: FindingView[]): [string, FindingView[]][] {
  const stations = new Map<string, FindingView[]>();
  for (const finding of findings) stations.set(finding.station, [...(stations.get(finding.station) ?? []), finding]);
  return [...stations];
}

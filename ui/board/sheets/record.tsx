// A record laid open: what it says, what was seen, and whether its signature is good.
import { MeaningShape } from "../../src/parts/shape";
import { to } from "../../src/route";
import type { FindingView, RecordView } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";

export function RecordSheet({ digest, point }: { digest: string; point?: string | undefined }) {
  const { value, fault, again } = useGet<RecordView>(`record/${encodeURIComponent(digest)}`);
  if (!value) return <Loading fault={fault} again={again} />;
  return (
    <>
      <SheetTitle over={value.kind}>{value.words}</SheetTitle>
      {value.machine && <p class="links"><a href={to("machine", value.machine)}>{t("wall-to-machine")}</a></p>}
      <section class={`signature ${value.good ? "good" : "bad"}`} aria-label={t("record-signature")} data-test="signature" data-good={value.good}>
        <p class="headline">{value.signature}</p>
        <dl>
          <dt>{t("record-by")}</dt>
          <dd>{value.by}</dd>
          <dt>{t("record-when")}</dt>
          <dd>{value.when}</dd>
          <dt>{t("record-digest")}</dt>
          <dd class="mono">{value.digest}</dd>
        </dl>
      </section>
      {value.interruptions.map((words) => <p key={words}>{words}</p>)}
      <ul class="findings">
        {value.findings.map((finding) => <Finding key={finding.point} finding={finding} marked={finding.point === point} />)}
      </ul>
      {value.left.length > 0 && (
        <>
          <h3>{t("wall-left", { count: value.left.length })}</h3>
          <ul class="plain-list">{value.left.map((left) => <li key={left.id}>{left.words}</li>)}</ul>
        </>
      )}
    </>
  );
}

function Finding({ finding, marked }: { finding: FindingView; marked: boolean }) {
  return (
    <li class={`finding ${marked ? "marked" : ""}`} data-test={`finding-${finding.point}`}>
      <MeaningShape means={finding.means} said />
      <div class="grow">
        <p class="soft">{finding.station}</p>
        <p><span class="strong">{finding.title}</span>: {finding.words}</p>
        {finding.band && <p class="soft">{finding.band}</p>}
        {finding.note && <p>{finding.note}</p>}
        {finding.corrections.map((words) => <p key={words} class="correction">{words}</p>)}
        {finding.photos.length > 0 && (
          <ul class="pictures">
            {finding.photos.map((photo, index) => (
              <li key={photo}><img src={`desk/photo/${photo}`} alt={t("photo-number", { number: index + 1 })} loading="lazy" /></li>
            ))}
          </ul>
        )}
      </div>
    </li>
  );
}

// One finding laid open, with all that belongs to it.
import { Photos } from "../parts/photo";
import { MeaningShape } from "../parts/shape";
import { to } from "../route";
import type { FindingView } from "../types";
import { t } from "../words";

export function Finding({ digest, finding, marked }: { digest: string; finding: FindingView; marked: boolean }) {
  return (
    <li id={`finding-${finding.point}`} class={`finding ${marked ? "marked" : ""}`} data-test={`finding-${finding.point}`}>
      <MeaningShape means={finding.means} said />
      <div class="grow">
        <p class="strong">{finding.title}</p>
        <p>
          {finding.words}
          {finding.band && <span class="soft"> · {t("finding-band", { band: finding.band })}</span>}
        </p>
        {finding.note && <p class="noted">{finding.note}</p>}
        <Photos digests={finding.photos} />
        {finding.before.map((earlier, index) => (
          <p key={index} class="soft">{t("finding-before", { words: earlier })}</p>
        ))}
        {finding.corrections.map((correction, index) => (
          <p key={index} class="correction">{correction}</p>
        ))}
        <p class="line">
          <span class="soft">{t("finding-seconds", { seconds: Math.round(finding.seconds) })}</span>
          {finding.choices.length > 0 && (
            <a class="otherwise" href={to("record", digest, finding.point, "otherwise")} data-test={`otherwise-${finding.point}`}>
              {t("otherwise")}
              <span class="unseen">: {finding.title}</span>
            </a>
          )}
        </p>
      </div>
    </li>
  );
}

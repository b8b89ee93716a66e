// A machine's life as one line of time: latest first, a mark for each record, hours beside it.
import { to } from "../route";
import type { TimelineEntry } from "../types";
import { t } from "../words";
import { MeaningShape } from "./shape";

/** Marks shown at first: a season has hundreds. */
const FIRST = 12;

export function Timeline({ entries }: { entries: TimelineEntry[] }) {
  return (
    <>
      <Line entries={entries.slice(0, FIRST)} />
      {entries.length > FIRST && (
        <details>
          <summary data-test="timeline-more">{t("some-more", { count: entries.length - FIRST })}</summary>
          <Line entries={entries.slice(FIRST)} />
        </details>
      )}
    </>
  );
}

function Line({ entries }: { entries: TimelineEntry[] }) {
  return (
    <ol class="timeline">
      {entries.map((entry) => (
        <li key={entry.record}>
          <a href={to("record", entry.record)} data-test={`entry-${entry.kind}`} data-record={entry.record}>
            <span class="time-mark">
              {entry.worst ? <MeaningShape means={entry.worst} size={26} said /> : <KindMark kind={entry.kind} />}
            </span>
            <span class="grow">
              <span class="block">{entry.words}</span>{" "}
              <span class="block soft">
                <time dateTime={entry.at}>{entry.when}</time> · {entry.by}
              </span>
            </span>
            {entry.hours !== null && <span class="num soft">{t("hours", { hours: entry.hours })}</span>}
          </a>
        </li>
      ))}
    </ol>
  );
}

/** Kinds that put something right or free: they get the paint. */
const PAINTED = ["defect-rectified", "job-released"];

/** What isn't an inspection: paint for what was put right, else a plain mark. */
function KindMark({ kind }: { kind: string }) {
  return (
    <svg class={`kind-mark ${kind}`} viewBox="0 0 26 26" aria-hidden="true">
      {PAINTED.includes(kind) ? <path class="paint-stroke" d="M3 18L23 8" /> : <rect x="7" y="7" width="12" height="12" rx="2" />}
    </svg>
  );
}

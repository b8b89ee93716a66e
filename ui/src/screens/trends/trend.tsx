// One measure: what it says, its chart, what was done meanwhile, and where its band is written.
import { useMemo, useRef } from "preact/hooks";
import { ChartWalk, type Stop } from "../../parts/chart-walk";
import { marksOf, trendPlot } from "../../parts/chart-trend";
import { useDraft } from "../../drafts";
import { to } from "../../route";
import type { TrendView } from "../../types";
import { t } from "../../words";
import { ReadingsTable } from "./table";

export function Trend({ machine, trend }: { machine: string; trend: TrendView }) {
  const { id, title, what, unit, points, band, sentences, drifts, direction } = trend;
  const [main, ...others] = sentences;
  const [chosen, setChosen] = useDraft(`trend/${machine}/${id}`, points.length - 1);
  const shown = Math.min(chosen, points.length - 1);
  const now = useRef(shown);
  now.current = shown;
  const plot = useMemo(() => trendPlot(trend, () => now.current), [trend]);
  const marks = marksOf(trend);
  return (
    <section class="trend" aria-labelledby={`trend-${id}`} data-test={`trend-${id}`} data-direction={direction} data-drifts={drifts}>
      <h2 id={`trend-${id}`}>{title}</h2>
      <p class={drifts ? "painted strong" : "strong"} data-test={`says-${id}`}>{main}</p>
      {unit.sign && <p class="chart-unit soft" aria-hidden="true">{unit.sign}</p>}
      <ChartWalk
        name={id}
        title={title}
        plot={plot}
        stops={points.map((point) => stopOf(point))}
        chosen={shown}
        onChosen={setChosen}
      />
      {others.map((sentence) => <p key={sentence}>{sentence}</p>)}
      {marks.length > 0 && (
        <details>
          <summary data-test={`marks-${id}`}>{t("trend-marks", { count: marks.length })}</summary>
          <ol class="chart-marks">
            {marks.map((mark) => (
              <li key={mark.record + mark.words}>
                <a href={to("record", mark.record)}>
                  <span class="grow">{mark.words}</span> <span class="num soft">{t("hours", { hours: mark.hours })}</span>
                </a>
              </li>
            ))}
          </ol>
        </details>
      )}
      {band && (
        <p class={band.confirmed ? "soft" : "unconfirmed"} data-test={`band-${id}`}>
          <span class="strong">{band.words}</span> {band.source}
        </p>
      )}
      <p class="soft">{what}</p>
      <ReadingsTable trend={trend} />
    </section>
  );
}

function stopOf({ hours, value, words, record, far_off }: TrendView["points"][number]): Stop {
  const more = [t("hours", { hours }), far_off && t("trend-far-off"), !record && t("trend-unsigned")];
  return { x: hours, y: value, words, more: more.filter(Boolean).join(" · "), record };
}

// Walking the readings of a chart: by the arrow keys, by a finger on the drawing, by two buttons under it.
// What stands under the drawing is also what is read out, and leads to the reading's record.
import { useId, useRef } from "preact/hooks";
import type uPlot from "uplot";
import { go, to } from "../route";
import { t } from "../words";
import { Chart, type Plot } from "./chart";

export interface Stop {
  /** Across and up, as drawn. */
  x: number;
  y: number;
  /** What it says. */
  words: string;
  /** Beside it, smaller. */
  more: string;
  /** Empty while it isn't signed. */
  record: string;
}

interface WalkProps {
  name: string;
  title: string;
  plot: Plot;
  stops: Stop[];
  chosen: number;
  onChosen: (index: number) => void;
}

const STEPS: Record<string, number> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageUp: -10, PageDown: 10, Home: -Infinity, End: Infinity };

export function ChartWalk({ name, title, plot, stops, chosen, onChosen }: WalkProps) {
  const id = useId();
  const drawn = useRef<uPlot | null>(null);
  const here = stops[chosen];
  const step = (by: number) => onChosen(Math.min(stops.length - 1, Math.max(0, chosen + by)));
  const key = (event: KeyboardEvent) => {
    const by = STEPS[event.key];
    if (by !== undefined) step(by);
    else if (event.key === "Enter" && here?.record) go("record", here.record);
    else return;
    event.preventDefault();
  };
  const touch = (event: MouseEvent) => {
    const near = drawn.current && nearest(drawn.current, stops, event);
    if (near != null) onChosen(near);
  };
  return (
    <div class="chart-walk">
      <div
        class="chart-field"
        role="application"
        tabIndex={0}
        aria-label={t("chart-name", { title, count: stops.length })}
        aria-describedby={`${id}-keys`}
        onKeyDown={key}
        onClick={touch}
        data-test={`chart-${name}`}
      >
        <Chart plot={plot} marked={chosen} onPlot={(next) => (drawn.current = next)} />
      </div>
      <p class="unseen" id={`${id}-keys`}>{t("chart-keys")}</p>
      <div class="chart-stop">
        <Step by={-1} off={chosen <= 0} words={t("chart-before")} name={name} onStep={step} />
        <p class="grow" role="status" data-test={`reading-${name}`}>
          {here &&
            (here.record ? (
              <a class="chart-said" href={to("record", here.record)} data-test={`reading-open-${name}`}>
                <Said stop={here} />
              </a>
            ) : (
              <span class="chart-said"><Said stop={here} /></span>
            ))}
        </p>
        <Step by={1} off={chosen >= stops.length - 1} words={t("chart-after")} name={name} onStep={step} />
      </div>
    </div>
  );
}

function Said({ stop: { words, more } }: { stop: Stop }) {
  return (
    <>
      <span class="strong">{words}</span> <span class="soft">{more}</span>
    </>
  );
}

function Step({ by, off, words, name, onStep }: { by: 1 | -1; off: boolean; words: string; name: string; onStep: (by: number) => void }) {
  return (
    <button type="button" class="step" aria-disabled={off} aria-label={words} onClick={() => onStep(by)} data-test={`${by < 0 ? "before" : "after"}-${name}`}>
      <svg class="chevron" viewBox="0 0 12 20" aria-hidden="true">
        <path d={by < 0 ? "M10 2L2 10L10 18" : "M2 2L10 10L2 18"} />
      </svg>
    </button>
  );
}

/** The reading nearest to where the drawing was touched. */
function nearest(plot: uPlot, stops: Stop[], { clientX, clientY }: MouseEvent): number {
  const { left, top } = plot.over.getBoundingClientRect();
  const far = ({ x, y }: Stop) => Math.hypot(plot.valToPos(x, "x") - (clientX - left), plot.valToPos(y, "y") - (clientY - top));
  return stops.reduce((best, stop, index) => (far(stop) < far(stops[best] ?? stop) ? index : best), 0);
}

// A chart as large as its place: drawn anew when the place, the letters, the colours or the numbers change.
import { useEffect, useRef } from "preact/hooks";
import type uPlot from "uplot";
import { language, t } from "../words";
import { lookOf, type Look } from "./chart-look";

export interface Plot {
  /** What is drawn: columns of numbers, the first across. */
  data: uPlot.AlignedData;
  options: (look: Look) => Omit<uPlot.Options, "width" | "height">;
}

interface ChartProps {
  plot: Plot;
  /** What changes in the drawing while the numbers stay. */
  marked?: unknown;
  /** Gives the chart to who asks it what lies where. */
  onPlot?: (plot: uPlot | null) => void;
}

export function Chart({ plot, marked, onPlot }: ChartProps) {
  const place = useRef<HTMLDivElement>(null);
  const drawn = useRef<uPlot | null>(null);
  useEffect(() => {
    const box = place.current;
    if (!box) return;
    let wanted = true;
    let rem = 0;
    const put = (next: uPlot | null) => {
      drawn.current?.destroy();
      drawn.current = next;
      onPlot?.(next);
    };
    const begin = import("./chart-engine").then(({ UPlot }) => () => {
      const look = lookOf(box);
      const size = { width: box.clientWidth, height: box.clientHeight };
      if (drawn.current && rem === look.rem) return drawn.current.setSize(size);
      rem = look.rem;
      put(new UPlot({ ...plot.options(look), ...size }, plot.data, box));
    });
    // What can't be loaded isn't drawn; the words and the table beside it say the same.
    const fit = () => void begin.then((draw) => wanted && box.clientWidth > 0 && draw(), () => undefined);
    const anew = () => drawn.current?.redraw(false, true);
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const watch = new ResizeObserver(fit);
    watch.observe(box);
    dark.addEventListener("change", anew);
    // Letters that come later have another width.
    void document.fonts.ready.then(anew);
    return () => {
      wanted = false;
      watch.disconnect();
      dark.removeEventListener("change", anew);
      put(null);
    };
  }, [plot, language.value]);
  useEffect(() => drawn.current?.redraw(false, false), [marked]);
  return <div class="chart" ref={place} aria-hidden="true" />;
}

/** The numbers along an axis, in the person's language. */
function axisNumber([first = 0, second = first + 1]: number[]): (value: number) => string {
  // As many decimals as a step has: 2.5 has one.
  const step = second - first;
  const whole = (digits: number) => Math.abs(step * 10 ** digits - Math.round(step * 10 ** digits)) < 1e-6;
  const digits = [0, 1, 2, 3, 4, 5].find(whole) ?? 6;
  const format = new Intl.NumberFormat(language.value, { useGrouping: false, minimumFractionDigits: digits, maximumFractionDigits: digits });
  return (value) => format.format(value);
}

function hoursName(splits: number[]): (value: number) => string {
  const name = axisNumber(splits);
  return (value) => t("axis-hours", { hours: name(value) });
}

/** Both axes as all charts have them: large numbers, ticks of ink, no grid that would look like readings. */
export function axes(look: Look, up: Partial<uPlot.Axis> = {}): uPlot.Axis[] {
  const now = (plot: uPlot) => lookOf(plot.root);
  const shared: uPlot.Axis = {
    font: look.letters(0.875),
    stroke: (plot) => now(plot).color("ink"),
    grid: { show: false },
    border: { show: true, width: 2, stroke: (plot) => now(plot).color("ink") },
    ticks: { size: 6, width: 2, stroke: (plot) => now(plot).color("ink") },
    values: (_, splits) => splits.map(axisNumber(splits)),
  };
  const width = (plot: uPlot, values: string[] | null) => {
    plot.ctx.font = look.letters(0.875);
    return Math.ceil(Math.max(0, ...(values ?? []).map((value) => plot.ctx.measureText(value).width))) + 14;
  };
  return [
    { ...shared, values: (_, splits) => splits.map(hoursName(splits)), space: 4.5 * look.rem, size: 1.25 * look.rem + 10, gap: 4 },
    { ...shared, space: 2.5 * look.rem, size: width, gap: 4, ...up },
  ];
}

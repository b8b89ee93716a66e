// One measure over engine hours: its readings, the band, the line with its room for doubt, where it is heading.
import type uPlot from "uplot";
import type { TrendMark, TrendView } from "../types";
import { t } from "../words";
import { axes, type Plot } from "./chart";
import { drawGrades } from "./chart-grades";
import { Pen, type Place, type Stroke } from "./chart-pen";

/** How far beyond the readings a limit may lie and still be drawn, in lengths of their time. */
const FORESEEN = 1.5;
/** The line from the last reading on: told, not read. */
const FORETOLD = [9, 6];

export const isGraded = (trend: TrendView) => trend.grades.length > 0;

/** From the first hours to the last that are drawn. */
export function hoursOf({ points, line, reaches }: TrendView): [number, number] {
  const all = points.map(({ hours }) => hours);
  const first = Math.min(...all);
  const last = Math.max(...all);
  const end = Math.max(last, line?.to_hours ?? last);
  const span = end - first;
  const far = end + FORESEEN * span;
  const told = reaches && reaches.low <= far ? [reaches.low, Math.min(reaches.at, far), Math.min(reaches.high ?? reaches.at, far)] : [];
  const to = Math.max(end, ...told);
  const room = 0.05 * (to - first) || 1;
  return [first - room, to + room];
}

/** Marks in sight, in the order of their numbers. */
export function marksOf(trend: TrendView): TrendMark[] {
  const [from, to] = hoursOf(trend);
  return trend.marks.filter(({ hours }) => hours >= from && hours <= to).sort((a, b) => a.hours - b.hours);
}

/** All that must be in sight; an end of the band far from everything else needn't. */
function valuesOf(trend: TrendView): [number, number] {
  if (isGraded(trend)) return [-0.5, trend.grades.length - 0.3];
  const { points, line, band } = trend;
  const must = [...points.map(({ value }) => value), ...(line ? [line.from, line.to] : []), ...(band?.limit != null ? [band.limit] : [])];
  let [low, high] = [Math.min(...must), Math.max(...must)];
  const span = high - low || Math.abs(high) * 0.1 || 1;
  for (const end of [band?.low, band?.high])
    if (end != null && end > low - span && end < high + span) [low, high] = [Math.min(low, end), Math.max(high, end)];
  const room = 0.12 * (high - low || span);
  return [low - room, high + room];
}

export function trendPlot(trend: TrendView, chosen: () => number): Plot {
  const graded = isGraded(trend);
  const hours = hoursOf(trend);
  const values = valuesOf(trend);
  return {
    data: [trend.points.map(({ hours }) => hours), trend.points.map(({ value }) => value)],
    options: (look) => ({
      scales: { x: { time: false, range: hours }, y: { range: values } },
      // Grades are named on their rows.
      axes: axes(look, graded ? { show: false } : {}),
      series: [{}, { paths: () => null, points: { show: false } }],
      padding: [0.5 * look.rem, 1.5 * look.rem, 0, graded ? 0.25 * look.rem : 0],
      cursor: { show: false },
      legend: { show: false },
      hooks: {
        drawClear: [(plot: uPlot) => drawBand(new Pen(plot), trend)],
        draw: [
          (plot: uPlot) => {
            const pen = new Pen(plot);
            pen.within(() => {
              drawMarks(pen, trend);
              if (graded) drawGrades(pen, trend, chosen());
              else drawReadings(pen, trend, chosen());
            });
          },
        ],
      },
    }),
  };
}

function drawBand(pen: Pen, { band }: TrendView) {
  if (!band) return;
  pen.within(() => {
    const low = band.low === null ? pen.bottom : pen.y(band.low);
    const high = band.high === null ? pen.top : pen.y(band.high);
    pen.fill([[pen.left, low], [pen.right, low], [pen.right, high], [pen.left, high]], "wash");
    for (const end of [band.low, band.high])
      if (end !== null && end !== band.limit) pen.line([[pen.left, pen.y(end)], [pen.right, pen.y(end)]], { ink: "soft", width: 1.5 });
  });
}

function drawReadings(pen: Pen, trend: TrendView, chosen: number) {
  drawLimit(pen, trend);
  if (trend.change) drawChange(pen, trend);
  if (trend.line) drawLine(pen, trend);
  const radius = trend.points.length > 120 ? 0.1875 : 0.28;
  trend.points.forEach(({ hours, value, far_off }) => {
    const at = pen.at([hours, value]);
    if (far_off) pen.diamond(at, radius + 0.12, "ink");
    else pen.disc(at, radius, "ink");
  });
  const here = trend.points[chosen];
  if (here) pen.ring(pen.at([here.hours, here.value]), 0.625, { ink: "warm", width: 3 });
}

/** Firm where a document confirms it. */
function drawLimit(pen: Pen, { band, unit }: TrendView) {
  if (band?.limit == null) return;
  const y = pen.y(band.limit);
  pen.line([[pen.left, y], [pen.right, y]], { ink: "stop", width: 3.5, ...(band.confirmed ? {} : { dash: [14, 7] }) });
  const above = y - pen.top > pen.rem(1.75);
  pen.words(t("trend-limit", { value: band.limit, unit: unit.sign }), [pen.left + pen.rem(0.5), y + pen.rem(above ? -0.9 : 0.9)], { ink: "stop" });
}

/** The level before and after. */
function drawChange(pen: Pen, { change }: TrendView) {
  if (!change) return;
  const x = pen.x(change.hours);
  const [before, after] = [pen.y(change.before), pen.y(change.after)];
  const look = { ink: "sea", width: 2.5, dash: [2, 4] } satisfies Stroke;
  pen.line([[pen.left, before], [x, before], [x, after], [pen.right, after]], look);
}

/** Paint says that something moved; where chance alone would do as well the line is only told. */
function drawLine(pen: Pen, { line, reaches, band, direction }: TrendView) {
  if (!line) return;
  const moved = direction !== "neither";
  const low: Place[] = [[line.from_hours, line.low_from], [line.to_hours, line.low_to]];
  const high: Place[] = [[line.to_hours, line.high_to], [line.from_hours, line.high_from]];
  pen.fill([...low, ...high].map(pen.at), moved ? "paint" : "ink", moved ? 0.22 : 0.12);
  for (const edge of [low, high]) pen.line(edge.map(pen.at), { ink: moved ? "warm" : "soft", width: 1.5, dash: [5, 4] });
  pen.line([pen.at([line.from_hours, line.from]), pen.at([line.to_hours, line.to])], moved ? { ink: "paint", width: 4.5 } : { ink: "soft", width: 2.5, dash: [12, 6] });
  if (!reaches || band?.limit == null) return;
  const limit = pen.y(band.limit);
  if (pen.x(reaches.low) > pen.right) return drawBeyond(pen, reaches.low, limit);
  const last = pen.at([line.to_hours, line.to]);
  pen.line([last, [pen.x(reaches.at), limit]], { ink: "paint", width: 3, dash: FORETOLD });
  // On the limit itself: from the earliest to the latest, open where there is no latest.
  const [from, to] = [pen.x(reaches.low), reaches.high === null ? pen.right : pen.x(reaches.high)];
  pen.line([[from, limit], [to, limit]], { ink: "paint", width: 8 });
  for (const end of [from, ...(reaches.high === null ? [] : [to])])
    pen.line([[end, limit - pen.rem(0.5)], [end, limit + pen.rem(0.5)]], { ink: "ink", width: 3 });
}

/** It reaches the limit further on than is drawn: an arrow on it, and from when on. */
function drawBeyond(pen: Pen, hours: number, y: number) {
  const [tip, back, wing] = [pen.right - pen.rem(0.25), pen.rem(0.75), pen.rem(0.5)];
  pen.line([[tip - back, y - wing], [tip, y], [tip - back, y + wing]], { ink: "paint", width: 4 });
  pen.words(t("trend-from", { hours }), [tip, y + pen.rem(y - pen.top > pen.rem(1.75) ? -1 : 1)], { align: "right" });
}

/** Numbered strokes of paint on the line of hours; numbers that would touch share a place. */
function drawMarks(pen: Pen, trend: TrendView) {
  const groups: { x: number; numbers: number[] }[] = [];
  marksOf(trend).forEach(({ hours }, index) => {
    const x = pen.x(hours);
    pen.line([[x, pen.top], [x, pen.bottom]], { ink: "faint", width: 1, dash: [3, 5] });
    pen.line([[x, pen.bottom], [x, pen.bottom - pen.rem(0.75)]], { ink: "paint", width: 5 });
    const last = groups.at(-1);
    if (last && x - last.x < pen.rem(1.5)) last.numbers.push(index + 1);
    else groups.push({ x, numbers: [index + 1] });
  });
  for (const { x, numbers } of groups) {
    const name = numbers.length > 1 ? `${numbers[0]}–${numbers.at(-1)}` : String(numbers[0]);
    const half = pen.widthOf(name) / 2 + pen.rem(0.25);
    const place = Math.min(pen.right - half, Math.max(pen.left + half, x));
    pen.words(name, [place, pen.bottom - pen.rem(1.375)], { align: "center" });
  }
}

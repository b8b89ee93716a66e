// How long components of a type last: the share still serviceable over engine hours, by steps and by a fitted curve.
import type uPlot from "uplot";
import type { LifeFinding, LifeView } from "../types";
import { language } from "../words";
import { axes, type Plot } from "./chart";
import { Pen, type Place } from "./chart-pen";

/** Under the axis: findings of failure, and lives still whole. */
const FAILED_ROW = -0.11;
const WHOLE_ROW = -0.22;

export function lifePlot(life: LifeView): Plot {
  const ends = [...life.survival.map(({ hours }) => hours), ...life.findings.map(({ after, by }) => by ?? after), ...life.fitted.map(({ hours }) => hours)];
  const last = Math.max(1, ...ends) * 1.03;
  const percent = new Intl.NumberFormat(language.value, { style: "percent" });
  return {
    data: [life.survival.map(({ hours }) => hours), life.survival.map(({ share }) => share)],
    options: (look) => ({
      scales: { x: { time: false, range: [0, last] }, y: { range: [-0.32, 1.04] } },
      axes: axes(look, {
        splits: () => [0, 0.25, 0.5, 0.75, 1],
        values: (_, splits) => splits.map((share) => percent.format(share)),
      }),
      series: [{}, { paths: () => null, points: { show: false } }],
      padding: [0.5 * look.rem, 1.5 * look.rem, 0, 0],
      cursor: { show: false },
      legend: { show: false },
      hooks: { draw: [(plot: uPlot) => draw(new Pen(plot), life, last)] },
    }),
  };
}

function draw(pen: Pen, { survival, fitted, findings }: LifeView, last: number) {
  pen.line([[pen.left, pen.y(0)], [pen.right, pen.y(0)]], { ink: "ink", width: 1.5 });
  if (fitted.length > 1) {
    const low = fitted.map(({ hours, low }) => pen.at([hours, low]));
    const high = fitted.map(({ hours, high }) => pen.at([hours, high]));
    pen.fill([...low, ...[...high].reverse()], "sea", 0.2);
    for (const edge of [low, high]) pen.line(edge, { ink: "sea", width: 1.5, dash: [5, 4] });
    pen.line(fitted.map(({ hours, share }) => pen.at([hours, share])), { ink: "sea", width: 4.5 });
  }
  drawSteps(pen, survival, last);
  findings.forEach((finding) => mark(pen, finding));
}

/** From one step to the next nothing changes; between two looks it fell, and where can't be said. */
function drawSteps(pen: Pen, survival: LifeView["survival"], last: number) {
  let before = { hours: 0, share: 1 };
  survival.forEach((step, index) => {
    const fell: Place[] = [[step.since, before.share], [step.hours, before.share], [step.hours, step.share], [step.since, step.share]];
    pen.fill(fell.map(pen.at), "ink", 0.16);
    pen.line([pen.at([step.since, before.share]), pen.at([step.hours, step.share])], { ink: "ink", width: 1.5, dash: [2, 4] });
    pen.line([pen.at([before.hours, before.share]), pen.at([step.since, before.share])], { ink: "ink", width: 3 });
    const middle = (step.hours + (survival[index + 1]?.since ?? last)) / 2;
    pen.line([pen.at([middle, step.low]), pen.at([middle, step.high])], { ink: "soft", width: 1.5 });
    before = step;
  });
  pen.line([pen.at([before.hours, before.share]), pen.at([last, before.share])], { ink: "ink", width: 3 });
}

/** Failed somewhere between two looks: both, and a bar at the second. Still whole: a ring where it was last seen so. */
function mark(pen: Pen, { after, by }: LifeFinding) {
  if (by === null) return pen.ring(pen.at([after, WHOLE_ROW]), 0.25, { ink: "ink", width: 2 });
  const [from, to] = [pen.at([after, FAILED_ROW]), pen.at([by, FAILED_ROW])];
  pen.line([from, to], { ink: "stop", width: 2 });
  pen.line([[to[0], to[1] - pen.rem(0.4)], [to[0], to[1] + pen.rem(0.4)]], { ink: "stop", width: 4 });
}

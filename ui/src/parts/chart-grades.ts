// Grades over engine hours: three rows named by what is seen, and the shapes that mean serviceable, watch, unserviceable.
import type { TrendView } from "../types";
import type { Pen, Place } from "./chart-pen";

export function drawGrades(pen: Pen, trend: TrendView, chosen: number) {
  trend.grades.forEach((_, grade) => {
    const y = pen.y(grade);
    pen.line([[pen.left, y], [pen.right, y]], { ink: "faint", width: 1.5 });
  });
  const line = trend.line;
  if (line) pen.line([pen.at([line.from_hours, line.from]), pen.at([line.to_hours, line.to])], { ink: "paint", width: 4.5 });
  const radius = trend.points.length > 60 ? 0.34 : 0.5;
  trend.points.forEach(({ hours, value }, index) => {
    const at = pen.at([hours, value]);
    if (index === chosen) pen.ring(at, radius + 0.3, { ink: "warm", width: 3, hollow: true });
    shape(pen, at, Math.round(value), radius);
  });
  // Last, so that no shape lies over them.
  trend.grades.forEach((words, grade) => pen.words(words, [pen.left + pen.rem(0.25), pen.y(grade) - pen.rem(1.125)]));
}

/** As everywhere: filled ring, half ring, barred ring. */
function shape(pen: Pen, at: Place, grade: number, radius: number) {
  if (grade <= 0) return pen.disc(at, radius, "sea");
  pen.ring(at, radius, { ink: grade === 1 ? "ink" : "stop", hollow: true });
  if (grade === 1) return pen.half(at, radius, "ink");
  const reach = pen.rem(radius * 0.85);
  pen.line([[at[0] - reach, at[1]], [at[0] + reach, at[1]]], { ink: "stop", width: 4.5 });
}

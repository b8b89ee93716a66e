// Grades over engine hours: three rows named by what is seen, and the shapes that mean serviceable, watch, unserviceable.
import type { TrendView } from "../types";
import type { Pen, Place } from "./chart-pen";

export function drawGrades(pen: Pen, trend: TrendView, chosen: number) {
  trend.grades.forEach((_, grade) => {
    const y = pen.y(grade);
    pen.line([[pen.left, y], [pen.right, y]], { ink: "faint", width: 1.5 });
  });
  // Many looks stand closer.
  const room = (pen.right - pen.left) / pen.rem(1) / trend.points.length;
  const radius = Math.min(0.5, Math.max(0.25, 0.45 * room));
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

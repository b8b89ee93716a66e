// Finding one's way in a list: where a point lies, and where to go after an answer.
import type { PointView, StationView, Walk, WalkBrief, WalkProgress } from "./types";
import { to, turnTo } from "./route";
import { advanced } from "./state";

export interface Place {
  station: StationView;
  point: PointView;
  /** Counted from one. */
  stationNumber: number;
  pointNumber: number;
}

export function placeOf(walk: Walk, id: string): Place | null {
  for (const [s, station] of walk.stations.entries()) {
    const p = station.points.findIndex((point) => point.id === id);
    const point = station.points[p];
    if (point) return { station, point, stationNumber: s + 1, pointNumber: p + 1 };
  }
  return null;
}

export function stationOf(walk: Walk, point: string | null): string | undefined {
  return point === null ? undefined : placeOf(walk, point)?.station.id;
}

export const mapOf = (walk: Walk) => to("walk", walk.machine, walk.occasion);
export const pointOf = (walk: Walk, point: string) => to("walk", walk.machine, walk.occasion, "point", point);
export const summaryOf = (walk: Walk) => to("walk", walk.machine, walk.occasion, "summary");

/** A walk that was only opened counts as not begun. */
export function begun(walk: WalkBrief | null): WalkBrief | null {
  return walk && walk.done > 0 ? walk : null;
}

/** Whether a point still wants a look. */
export function wantsLook(progress: WalkProgress, point: string): boolean {
  return progress.points[point]?.state !== "done";
}

/** Takes the core's word for where the inspector stands, and goes there; this point makes room for the next. */
export function moveOn(walk: Walk, progress: WalkProgress) {
  advanced(progress);
  if (progress.current) turnTo("walk", walk.machine, walk.occasion, "point", progress.current);
  else turnTo("walk", walk.machine, walk.occasion, "summary");
}

/** After an answer was taken back: to its point, wherever in the list it lies. */
export function moveBack(walk: Walk, progress: WalkProgress) {
  const before = walk.progress.points;
  const reopened = Object.keys(progress.points).find(
    (id) => before[id]?.given && JSON.stringify(before[id]) !== JSON.stringify(progress.points[id]),
  );
  moveOn(walk, { ...progress, current: reopened ?? progress.current });
  advanced(progress);
}

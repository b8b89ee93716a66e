// What the points of the lists are worth, for their author; in the app and on the board.
import { Some } from "../../parts/some";
import type { ListWorth, PointWorth } from "../../types";
import { t } from "../../words";
import { ShareBar } from "./bars";

const SORTS = ["often", "plain", "never", "few"];

export function WorthBody({ worth: { points, caution }, heading }: { worth: ListWorth; heading: "h2" | "h3" }) {
  const most = scaleOf(points);
  return (
    <>
      <p class="cautions" data-test="worth-caution">{caution}</p>
      {points.length === 0 && <p data-test="worth-none">{t("worth-none")}</p>}
      {points.some(tells) && <p class="soft">{t("worth-scale", { most })}</p>}
      {SORTS.map((sort) => <Group key={sort} sort={sort} points={points.filter((point) => point.sort === sort)} most={most} heading={heading} />)}
    </>
  );
}

/** Where too few looks tell nothing, nothing is drawn, and no share is named. */
const tells = ({ sort }: PointWorth) => sort !== "few";

/** Percent at the end of all lines: the least round number that has room for every interval. */
function scaleOf(points: PointWorth[]): number {
  const highest = Math.max(0, ...points.filter(tells).map(({ high }) => high));
  return [1, 2, 5, 10, 20, 50].find((end) => end >= highest) ?? 100;
}

interface GroupProps {
  sort: string;
  points: PointWorth[];
  most: number;
  heading: "h2" | "h3";
}

function Group({ sort, points, most, heading: Heading }: GroupProps) {
  if (points.length === 0) return null;
  return (
    <section class="worths" aria-labelledby={`worth-${sort}`} data-test={`worth-${sort}`}>
      <Heading id={`worth-${sort}`}>{t(`worth-sort-${sort}`, { count: points.length })}</Heading>
      <Some rows={points.map((point) => <Point key={point.point} point={point} most={most} />)} />
    </section>
  );
}

function Point({ point, most }: { point: PointWorth; most: number }) {
  const { point: id, title, looks, watch, unserviceable, percent, low, high, seconds, hurried_percent, machines, words } = point;
  return (
    <li class="worth" data-test={`worth-point-${id}`}>
      <p class="strong">{title}</p>
      {tells(point) && <ShareBar percent={percent} low={low} high={high} most={most} />}
      <p>{words}</p>
      {tells(point) && machines > 0 && <p class="soft">{t("worth-counts", { looks, watch, unserviceable, machines })}</p>}
      {tells(point) && seconds !== null && <p class="soft">{t("worth-seconds", { seconds, hurried: hurried_percent })}</p>}
    </li>
  );
}

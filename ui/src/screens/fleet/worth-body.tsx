// What the points of the lists are worth, for their author; in the app and on the board.
import { Some } from "../../parts/some";
import type { ListWorth, PointWorth } from "../../types";
import { t } from "../../words";
import { ShareBar } from "./bars";

const SORTS = ["often", "never", "plain"];

export function WorthBody({ worth: { points, caution } }: { worth: ListWorth }) {
  return (
    <>
      <p class="cautions strong" data-test="worth-caution">{caution}</p>
      {points.length === 0 && <p data-test="worth-none">{t("worth-none")}</p>}
      {SORTS.map((sort) => <Group key={sort} sort={sort} points={points.filter((point) => point.sort === sort)} />)}
    </>
  );
}

function Group({ sort, points }: { sort: string; points: PointWorth[] }) {
  if (points.length === 0) return null;
  return (
    <section class="worths" aria-labelledby={`worth-${sort}`} data-test={`worth-${sort}`}>
      <h2 id={`worth-${sort}`}>{t(`worth-sort-${sort}`, { count: points.length })}</h2>
      <Some rows={points.map((point) => <Point key={point.point} point={point} />)} />
    </section>
  );
}

function Point({ point }: { point: PointWorth }) {
  const { point: id, title, looks, watch, unserviceable, percent, low, high, seconds, hurried_percent, machines, must, words } = point;
  return (
    <li class="worth" data-test={`worth-point-${id}`}>
      <p class="line">
        <span class="strong">{title}</span> <span class="num">{t("worth-share", { percent, low, high })}</span>
      </p>
      <ShareBar percent={percent} low={low} high={high} />
      <p>{words}</p>
      {must && <p class="soft">{t("worth-must")}</p>}
      <p class="soft">{t("worth-counts", { looks, watch, unserviceable, machines })}</p>
      {seconds !== null && <p class="soft">{t("worth-seconds", { seconds, hurried: hurried_percent })}</p>}
    </li>
  );
}

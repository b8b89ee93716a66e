// How long components of one type last: what it rests on, the interval that follows, the curve; in the app and on the board.
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { Chart } from "../../parts/chart";
import { lifePlot } from "../../parts/chart-life";
import type { LifeView } from "../../types";
import { t } from "../../words";
import { LifeKey } from "./life-key";
import { LifeTable } from "./life-table";

export function LifeBody({ life, children }: { life: LifeView; children: ComponentChildren }) {
  const plot = useMemo(() => lifePlot(life), [life]);
  const [main, ...others] = life.sentences;
  return (
    <div class="life">
      <div class="stack life-main">
        {life.part.invented && <span class="invented">{t("invented")}</span>}
        <p class="strong" data-test="rests-on">{life.rests_on}</p>
        <Intervals life={life} />
        <p class={life.shortens ? "painted strong" : "strong"} data-test="life-says">{main}</p>
      </div>
      {life.survival.length > 0 && (
        <div class="stack life-drawn">
          <figure class="chart-figure">
            <figcaption class="soft">{t("life-caption")}</figcaption>
            <Chart plot={plot} />
          </figure>
          <LifeKey life={life} />
          <LifeTable life={life} />
        </div>
      )}
      <div class="stack life-more">
        {others.map((sentence) => <p key={sentence}>{sentence}</p>)}
        {life.intervals.map((sentence) => <p key={sentence} class="soft">{sentence}</p>)}
        {children}
      </div>
    </div>
  );
}

/** What is in force beside what the evidence suggests; under what that rests on, never without it. */
function Intervals({ life: { in_force, every, shortens, chance } }: { life: LifeView }) {
  if (in_force === null && every === null && !shortens) return null;
  return (
    <div class="intervals" data-test="intervals" data-shortens={shortens}>
      {in_force !== null && (
        <p>
          <span class="block">{t("life-in-force")}</span> <span class="big-value num">{t("life-every", { hours: in_force })}</span>
        </p>
      )}
      {(shortens || (in_force === null && every !== null)) && (
        <p class={shortens ? "painted" : ""}>
          <span class="block">{every === null ? t("life-asked") : t(shortens ? "life-asked-for" : "life-suggested")}</span>{" "}
          <span class="big-value num" data-test="life-every">{every === null ? t("life-every-flight") : t("life-every", { hours: every })}</span>{" "}
          {every !== null && <span class="block soft">{t("life-chance", { percent: 100 * chance })}</span>}
        </p>
      )}
      {!shortens && in_force !== null && <p>{t("life-stays-so")}</p>}
      <p class="soft whole-line">{t("life-only-shorter")}</p>
    </div>
  );
}

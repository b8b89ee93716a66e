// What every point's screen shows, however it is answered: where it lies and what to look for.
import { ReadAloud } from "../parts/aloud";
import { Caution } from "../parts/cautions";
import { Photos } from "../parts/photo";
import { MiniPlan } from "../parts/plan";
import { MeaningShape } from "../parts/shape";
import { to } from "../route";
import type { PointState, Walk } from "../types";
import { mapOf, type Place } from "../walking";
import { t } from "../words";

export function Where({ walk, place }: { walk: Walk; place: Place }) {
  return (
    <>
      <WhereLink walk={walk} place={place} />
      <ReadAloud point={place.point} />
    </>
  );
}

function WhereLink({ walk, place }: { walk: Walk; place: Place }) {
  const { progress } = walk;
  return (
    <a class="where" href={mapOf(walk)} data-test="to-map">
      <MiniPlan station={place.station.id} />
      <span class="grow">
        <span class="unseen">{t("point-to-map")} </span>
        <span class="strong">{place.station.words}</span>
        <span class="soft">
          {t("point-place", {
            place: place.stationNumber,
            places: walk.stations.length,
            point: place.pointNumber,
            points: place.station.points.length,
          })}
        </span>
      </span>
      <span class="soft num minutes">{t("minutes", { minutes: Math.round(progress.minutes) })}</span>
    </a>
  );
}

/** Over the title: where to stand, said once at each place, and whether a life hangs on the point. */
export function Over({ place: { point, station, pointNumber } }: { place: Place }) {
  return (
    <>
      {pointNumber === 1 && <span class="stand">{station.stand}</span>}
      {point.critical && <span class="critical" data-test="critical">{t("point-critical")}</span>}
    </>
  );
}

export function Words({ place, state }: { place: Place; state: PointState | undefined }) {
  const { point } = place;
  return (
    <>
      {point.caution && <Caution words={point.caution} />}
      {point.last_time && (
        <p class="last-time" data-test="last-time">
          <MeaningShape means={point.last_time.means} size={18} />
          <span>
            <a href={to("record", point.last_time.record, point.id)}>{point.last_time.words}</a>
          </span>
        </p>
      )}
      <p class="look-for">
        <MeaningShape means="serviceable" size={18} />
        <span><span class="unseen">{t("point-good")} </span>{point.good}</span>
      </p>
      <p class="look-for">
        <MeaningShape means="unserviceable" size={18} />
        <span><span class="unseen">{t("point-bad")} </span>{point.bad}</span>
      </p>
      <p class="soft">{point.why}</p>
      {state?.given && (
        <p class="said" data-test="said">
          {t(state.state === "again" ? "point-said-again" : "point-said", { words: state.given.words })}
        </p>
      )}
      {state?.state === "left" && <p class="said">{t("point-left")}</p>}
      {point.unconfirmed && <p class="unconfirmed">{point.unconfirmed}</p>}
      {state?.note && <p class="noted" data-test="noted">{state.note}</p>}
      <Photos digests={state?.photos ?? []} />
    </>
  );
}

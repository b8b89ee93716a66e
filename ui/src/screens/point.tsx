// One point fills the screen: the place drawn, what good and bad look like, and its own answers.
import { call } from "../calls";
import { useAct, useSeconds } from "../hooks";
import { Caution } from "../parts/cautions";
import { Drawing } from "../parts/drawing";
import { FaultNote } from "../parts/fault";
import { Page, Waiting } from "../parts/page";
import { Photos } from "../parts/photo";
import { MiniPlan } from "../parts/plan";
import { MeaningShape } from "../parts/shape";
import { go, to } from "../route";
import { announce } from "../state";
import type { Given, PointState, Walk } from "../types";
import { mapOf, moveOn, placeOf, type Place } from "../walking";
import { t } from "../words";
import { Answers } from "./answers";
import { Measure } from "./measure";
import { SteppedBack } from "./stepped-back";
import { Tools } from "./tools";

export function PointScreen({ walk, id }: { walk: Walk; id: string }) {
  const seconds = useSeconds(id);
  const { busy, fault, act, again } = useAct();
  const place = placeOf(walk, id);
  if (!place) {
    const lost = { kind: "no-point", message: t("point-unknown"), hint: t("point-unknown-hint") };
    return <Waiting screen="point" fault={lost} again={() => go("walk", walk.machine, walk.occasion)} />;
  }
  const { point } = place;
  const state = walk.progress.points[id];
  // Only when the core has it on the disk does the screen say so.
  const answer = (given: Given) =>
    act(async () => {
      const progress = await call("answer", { walk: walk.id, point: id, given, seconds: seconds() });
      const words = progress.points[id]?.given?.words ?? "";
      announce(t("point-kept", { words, done: progress.done, of: progress.of }));
      moveOn(walk, progress);
    });

  return (
    <Page
      screen="point"
      title={point.title}
      header={<Where walk={walk} place={place} />}
      pictureFirst
      picture={<Drawing name={point.drawing} focus={point.focus} />}
      over={<Over place={place} />}
      foot={
        <>
          <FaultNote fault={fault} again={again} />
          {point.ask.by === "words" ? (
            <Answers answers={point.ask.answers} given={state?.given ?? null} busy={busy} onAnswer={answer} />
          ) : (
            <Measure walk={walk.id} point={point} ask={point.ask} given={state?.given ?? null} busy={busy} onAnswer={answer} />
          )}
          <Tools walk={walk} place={place} state={state} act={act} busy={busy} />
        </>
      }
    >
      <SteppedBack progress={walk.progress} />
      <Words place={place} state={state} />
    </Page>
  );
}

function Where({ walk, place }: { walk: Walk; place: Place }) {
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
function Over({ place: { point, station, pointNumber } }: { place: Place }) {
  return (
    <>
      {pointNumber === 1 && <span class="stand">{station.stand}</span>}
      {point.critical && <span class="critical" data-test="critical">{t("point-critical")}</span>}
    </>
  );
}

function Words({ place, state }: { place: Place; state: PointState | undefined }) {
  const { point } = place;
  return (
    <>
      {point.caution && <Caution words={point.caution} />}
      {point.last_time && (
        <p class="last-time" data-test="last-time">
          <MeaningShape means={point.last_time.means} size={18} />
          <span>
            <strong>{t("point-last-time")}</strong>{" "}
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
      {point.ask.by === "value" && <p class="unconfirmed">{point.ask.source}</p>}
      {point.unconfirmed && <p class="unconfirmed">{point.unconfirmed}</p>}
      {state?.note && <p class="noted" data-test="noted">{state.note}</p>}
      <Photos digests={state?.photos ?? []} />
    </>
  );
}

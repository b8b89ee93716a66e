// One point fills the screen: the place drawn, what good and bad look like, and its own answers.
import { hush } from "../aloud";
import { call } from "../calls";
import { useAct, useSeconds } from "../hooks";
import { Drawing } from "../parts/drawing";
import { FaultNote } from "../parts/fault";
import { Page, Waiting } from "../parts/page";
import { go } from "../route";
import { announce } from "../state";
import type { Given, Walk } from "../types";
import { moveOn, placeOf } from "../walking";
import { t } from "../words";
import { Answers } from "./answers";
import { Measure } from "./measure";
import { Over, Where, Words } from "./point-parts";
import { SteppedBack } from "./stepped-back";
import { Tools } from "./tools";
import { Torque } from "./torque/torque";

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
  if (point.ask.by === "torque")
    return <Torque walk={walk} place={place} point={point} ask={point.ask} seconds={seconds} />;
  // Only when the core has it on the disk does the screen say so.
  const answer = (given: Given, kept?: () => void) =>
    act(async () => {
      hush();
      const progress = await call("answer", { walk: walk.id, point: id, given, seconds: seconds() });
      kept?.();
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

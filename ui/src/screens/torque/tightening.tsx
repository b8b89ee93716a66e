// Nut after nut, round after round: each tap says that the tool clicked.
import { useRef } from "preact/hooks";
import { hush } from "../../aloud";
import { call } from "../../calls";
import { useAct, useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { announce } from "../../state";
import type { ToolView } from "../../types";
import { moveOn } from "../../walking";
import { ownOf } from "../../units";
import { t } from "../../words";
import { AdapterForm } from "./adapter";
import { adapterOf, ANEW, halfTyped, inHand, readingOf, type useBench } from "./bench";
import { Eighths, NEAR } from "./eighths";
import { Finish, FINISH } from "./finish";
import { Pattern } from "./pattern";
import { Setting } from "./setting";
import { TorquePage, type TorqueProps } from "./torque";
import { WhyAllTheSame } from "./why-all-the-same";

/** Two clicks of a wrench lie further apart; a bounce of the finger doesn't. */
const BOUNCE_MS = 350;

export function Tightening(props: TorqueProps & { bench: ReturnType<typeof useBench>; tool: ToolView }) {
  const { walk, place, point, ask, bench, tool, seconds } = props;
  const { draft, put } = bench;
  const adapter = adapterOf(draft.adapter);
  const plan = useLoad("torque-plan", { walk: walk.id, point: point.id, tool: tool.kept.tool, adapter });
  const { busy, fault, act } = useAct();
  const tapped = useRef(-BOUNCE_MS);
  const steps = plan.value?.steps ?? [];
  const next = steps[draft.step];
  const clicked = steps.slice(0, draft.step).filter((step) => !next || step.stage === next.stage);
  const moved = next ? (draft.eighths[next.nut - 1] ?? null) : null;
  const half = halfTyped(draft.adapter);
  const wanting = next?.movement === true && moved === null;
  // Below stands more than buttons: the drawing makes room.
  const crowded = !next || (moved !== null && !NEAR.includes(moved));
  const unit = draft.readingUnit ?? ownOf(ask.units);

  const click = () => {
    const now = performance.now();
    if (!next || wanting || half || now - tapped.current < BOUNCE_MS) return;
    tapped.current = now;
    hush();
    const after = steps[draft.step + 1];
    put({ step: draft.step + 1 });
    announce(after ? t("torque-next", { nut: after.nut, round: after.stage_words, setting: after.setting }) : t("torque-all"));
  };
  const turn = (nut: number, eighths: number) => {
    const all = Array.from({ length: ask.nuts }, (_, index) => draft.eighths[index] ?? null);
    all[nut - 1] = eighths;
    put({ eighths: all });
  };
  const done = () =>
    act(async () => {
      const progress = await call("torque-done", {
        walk: walk.id,
        point: point.id,
        tool: tool.kept.tool,
        adapter,
        eighths: Array.from({ length: ask.nuts }, (_, index) => draft.eighths[index] ?? 0),
        reading: readingOf(draft, unit),
        override_reason: draft.reason,
        seconds: seconds(),
      });
      bench.done();
      announce(t("point-kept", { words: progress.points[point.id]?.given?.words ?? "", done: progress.done, of: progress.of }));
      moveOn(walk, progress);
    });

  const otherTool = (
    <button type="button" class="tool" onClick={() => put(inHand(""))} data-test="other-tool">
      {t("torque-other-tool")}
    </button>
  );
  if (plan.value?.standing === "refused" && !draft.admitted)
    return (
      <TorquePage
        walk={walk}
        place={place}
        picture={
          <div class="bench small">
            <Pattern positions={ask.positions} clicked={[]} next={undefined} />
          </div>
        }
        foot={
          <WhyAllTheSame
            against={plan.value.against}
            reason={draft.reason}
            onReason={(reason) => put({ reason })}
            onSaid={() => put({ admitted: true })}
          />
        }
        tools={<div class="tools">{otherTool}</div>}
      />
    );

  // Once a nut has clicked, taking back means the nut; before that, whatever came before this point.
  const tools = draft.step > 0 && (
    <div class="tools" role="group" aria-label={t("tools")}>
      <button type="button" class="tool" onClick={() => put({ step: draft.step - 1 })} data-test="nut-back">
        {t("torque-nut-back")}
      </button>
      <button type="button" class="tool" onClick={() => put(ANEW)} data-test="torque-anew">
        {t("torque-anew")}
      </button>
      {otherTool}
    </div>
  );

  return (
    <TorquePage
      walk={walk}
      place={place}
      picture={
        <div class={`bench ${crowded ? "small" : ""} ${next ? "" : "finished"}`}>
          {plan.value && <Setting view={plan.value} next={next} ask={ask} />}
          <Pattern positions={ask.positions} clicked={clicked} next={next} />
        </div>
      }
      tools={tools}
      foot={
        <>
          <FaultNote fault={plan.fault} again={plan.again} />
          {next && (
            <>
              <p class="ask-nut">
                <span class="strong">{t("torque-nut", { nut: next.nut, nuts: ask.nuts })}</span>{" "}
                {next.movement ? t("torque-how-far-ask") : t("torque-pull")}
              </p>
              {next.movement && <Eighths nut={next.nut} value={moved} onValue={(eighths) => turn(next.nut, eighths)} />}
              <button type="button" class="go" aria-disabled={wanting || half} onClick={click} data-test="clicked">
                {half ? t("adapter-half-first") : t(wanting ? "torque-say-how-far" : "torque-clicked")}
              </button>
            </>
          )}
          {plan.value && !next && (
            <>
              <p class="strong">{t("torque-all")}</p>
              <FaultNote fault={fault} />
              <button type="submit" form={FINISH} class="go" aria-disabled={busy} data-test="torque-done">
                {t("measure-enter")}
              </button>
            </>
          )}
        </>
      }
    >
      {plan.value && !next && (
        <Finish draft={draft} put={put} ask={ask} unit={unit} standing={plan.value.standing} fault={fault} onDone={done} />
      )}
      {plan.value && (
        <p class="soft" data-test="spread">{plan.value.spread}</p>
      )}
      {draft.step === 0 && <div class="tools">{otherTool}</div>}
      <AdapterForm draft={draft.adapter} onDraft={(adapter) => put({ adapter, ...ANEW })} />
    </TorquePage>
  );
}

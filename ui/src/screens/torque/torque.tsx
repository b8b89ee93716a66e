// Tightening a joint: the tool, what it is set to, nut after nut across the joint, and what each one did.
import type { ComponentChildren } from "preact";
import { useAct, useLoad } from "../../hooks";
import { Page } from "../../parts/page";
import { to } from "../../route";
import type { PointView, TorqueAsk, Walk } from "../../types";
import type { Place } from "../../walking";
import { t } from "../../words";
import { Where, Words } from "../point-parts";
import { Tools } from "../tools";
import { inHand, useBench } from "./bench";
import { ChooseTool } from "./choose-tool";
import { Pattern } from "./pattern";
import { Tightening } from "./tightening";

export interface TorqueProps {
  walk: Walk;
  place: Place;
  point: PointView;
  ask: TorqueAsk;
  seconds: () => number;
}

export function Torque(props: TorqueProps) {
  const { walk, place, point, ask } = props;
  const bench = useBench(walk.id, point.id);
  const tools = useLoad("tools", {});
  const tool = tools.value?.find((one) => one.kept.tool === bench.draft.tool);
  if (ask.has_number && tool) return <Tightening {...props} bench={bench} tool={tool} />;
  return (
    <TorquePage
      walk={walk}
      place={place}
      picture={<Pattern positions={ask.positions} clicked={[]} next={undefined} />}
      foot={
        ask.has_number ? (
          <ChooseTool walk={walk} point={point.id} tools={tools.value} fault={tools.fault} again={tools.again} onTool={(id) => bench.put(inHand(id))} />
        ) : (
          <>
            <p class="strong" data-test="no-number">{t("torque-no-number")}</p>
            <a class="button go" href={to("machine", walk.machine, "limit", ask.band)} data-test="to-limit">{t("torque-to-limit")}</a>
          </>
        )
      }
    >
      <p class="unconfirmed">{ask.source}</p>
    </TorquePage>
  );
}

/** The frame that all of a tightening's screens share. */
export function TorquePage(props: {
  walk: Walk;
  place: Place;
  picture: ComponentChildren;
  foot: ComponentChildren;
  tools?: ComponentChildren;
  children?: ComponentChildren;
}) {
  const { walk, place } = props;
  const { busy, act } = useAct();
  const state = walk.progress.points[place.point.id];
  return (
    <Page
      screen="point"
      title={place.point.title}
      header={<Where walk={walk} place={place} />}
      picture={props.picture}
      foot={
        <>
          {props.foot}
          {props.tools || <Tools walk={walk} place={place} state={state} act={act} busy={busy} />}
        </>
      }
    >
      {props.children}
      <Words place={place} state={state} />
    </Page>
  );
}

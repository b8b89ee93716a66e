// Which tool tightens the joint; without one, the way to register it.
import type { Fault } from "../../calls";
import { FaultNote } from "../../parts/fault";
import { MeaningShape } from "../../parts/shape";
import { to } from "../../route";
import type { ToolView, Walk } from "../../types";
import { t } from "../../words";

interface ChooseToolProps {
  walk: Walk;
  point: string;
  tools: ToolView[] | null;
  fault: Fault | null;
  again: () => void;
  onTool: (id: string) => void;
}

export function ChooseTool({ walk, point, tools, fault, again, onTool }: ChooseToolProps) {
  if (!tools) return <FaultNote fault={fault} again={again} />;
  return (
    <>
      <p class="strong">{t(tools.length > 0 ? "torque-which-tool" : "torque-no-tool")}</p>
      <div class="answers" role="group" aria-label={t("torque-which-tool")}>
        {tools.map(({ kept, usable, words }) => (
          <button key={kept.tool} type="button" class="answer" onClick={() => onTool(kept.tool)} data-test={`use-tool-${kept.tool}`}>
            <MeaningShape means={usable ? "serviceable" : "unserviceable"} />
            <span class="grow">
              {kept.name} <span class="block soft">{words}</span>
            </span>
            <span class="unseen">, {t(usable ? "tool-usable" : "tool-unusable")}</span>
          </button>
        ))}
      </div>
      <a class={`button ${tools.length === 0 ? "go" : ""}`} href={to("tools", "new", walk.machine, walk.occasion, point)} data-test="tool-new">
        {t("tool-new")}
      </a>
    </>
  );
}

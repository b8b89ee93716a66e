// On the machine's page: what drifts, in its own sentence; or that nothing does, or that there is too little to say.
import { useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { to } from "../../route";
import type { TrendView } from "../../types";
import { t } from "../../words";

export function Drifts({ machine }: { machine: string }) {
  const { value, fault, again } = useLoad("trends", { machine });
  return (
    <section aria-labelledby="drifts" data-test="drifts">
      <h2 id="drifts">{t("drifts")}</h2>
      <FaultNote fault={fault} again={again} />
      {value && <Said machine={machine} trends={value} />}
      <ul class="rows">
        <li><a href={to("machine", machine, "trends")} data-test="to-trends"><span class="grow strong">{t("trends-title")}</span></a></li>
        <li><a href={to("machine", machine, "readings")} data-test="to-readings"><span class="grow strong">{t("readings-title")}</span></a></li>
      </ul>
    </section>
  );
}

function Said({ machine, trends }: { machine: string; trends: TrendView[] }) {
  const drifting = trends.filter(({ drifts }) => drifts);
  if (drifting.length === 0) return <p data-test="drifts-none">{none(trends)}</p>;
  return (
    <ul class="reasons">
      {drifting.map(({ id, title, sentences }) => (
        <li key={id} class="reason">
          <a href={to("machine", machine, "trends", id)} data-test={`drifts-${id}`}>
            <span class="grow">
              <span class="block strong">{title}</span> <span class="block">{sentences[0]}</span>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}

function none(trends: TrendView[]): string {
  const told = trends.filter(({ direction }) => direction !== "too-little").length;
  if (trends.length === 0) return t("drifts-no-readings");
  return told === 0 ? t("drifts-too-little", { count: trends.length }) : t("drifts-nothing", { told, few: trends.length - told });
}

// The walk: the machine from above is the menu, and the stations with their points lie beside it.
import { useRef, useState } from "preact/hooks";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { Page } from "../parts/page";
import { Plan } from "../parts/plan";
import { LookShape } from "../parts/shape";
import { to } from "../route";
import type { StationView, Walk } from "../types";
import { pointOf, placeOf, stationOf, summaryOf, wantsLook } from "../walking";
import { t } from "../words";
import { StepBack } from "./step-back";
import { SteppedBack } from "./stepped-back";

export function WalkMap({ walk }: { walk: Walk }) {
  const { progress } = walk;
  const { busy, fault, act, again } = useAct();
  const here = stationOf(walk, progress.current);
  const [open, setOpen] = useState(here);
  const list = useRef<HTMLOListElement>(null);
  const done = walk.stations.filter((s) => s.points.every((p) => !wantsLook(progress, p.id))).map((s) => s.id);
  const next = progress.current ? placeOf(walk, progress.current) : null;

  const show = (station: string) => {
    setOpen(station);
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    requestAnimationFrame(() =>
      list.current
        ?.querySelector(`[data-station="${station}"]`)
        ?.scrollIntoView({ block: "nearest", behavior: calm ? "auto" : "smooth" }),
    );
  };

  return (
    <Page
      screen="walk-map"
      title={t("walk-title", { machine: walk.machine_name })}
      over={t("walk-over", { list: walk.words, done: progress.done, of: progress.of })}
      back={{ href: to("machine", walk.machine), words: walk.machine_name }}
      picture={<Plan here={here} done={done} stations={walk.stations} onStop={show} />}
      foot={
        next ? (
          <a class="button go" href={pointOf(walk, next.point.id)} data-test="go-on">
            {t(progress.done === 0 ? "walk-begin" : "walk-go-on", { point: next.point.title })}
          </a>
        ) : (
          <a class="button go" href={summaryOf(walk)} data-test="to-summary">
            {t("walk-to-summary")}
          </a>
        )
      }
    >
      <SteppedBack progress={progress} />
      <ol class="stations" ref={list}>
        {walk.stations.map((station, index) => (
          <li key={station.id} data-station={station.id}>
            <button
              type="button"
              class="station"
              aria-expanded={open === station.id}
              onClick={() => setOpen(open === station.id ? undefined : station.id)}
              data-test={`station-${station.id}`}
            >
              <span class={`station-number ${station.id === here ? "here" : done.includes(station.id) ? "done" : ""}`}>{index + 1}</span>
              <span class="grow strong">
                {station.words}
                {station.id === here && <span class="unseen"> {t("walk-here")}</span>}
              </span>
              <span class="num soft">{countOf(walk, station)}</span>
            </button>
            {open === station.id && <Points walk={walk} station={station} />}
          </li>
        ))}
      </ol>
      <FaultNote fault={fault} again={again} />
      <div class="links">
        {next && (
          <a href={summaryOf(walk)} data-test="to-summary">
            {t("walk-to-summary-early")}
          </a>
        )}
        <StepBack walk={walk} busy={busy} act={act} />
      </div>
    </Page>
  );
}

function countOf(walk: Walk, station: StationView): string {
  const done = station.points.filter((point) => !wantsLook(walk.progress, point.id)).length;
  return t("walk-count", { done, of: station.points.length });
}

function Points({ walk, station }: { walk: Walk; station: StationView }) {
  return (
    <div class="station-points">
      <p class="soft">{station.stand}</p>
      <ul>
        {station.points.map((point) => {
          const state = walk.progress.points[point.id];
          return (
            <li key={point.id}>
              <a href={pointOf(walk, point.id)} data-test={`point-${point.id}`}>
                <LookShape look={state?.state ?? "open"} means={state?.given?.means} />
                <span class="grow">{point.title}</span>
              </a>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

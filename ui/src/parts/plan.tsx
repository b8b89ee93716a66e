// The machine seen from above: the walk's menu, and in small the sign of where one stands.
import { useMemo } from "preact/hooks";
import { drawings } from "../state";
import { Inlined, marked } from "./drawing";

/** The plan without its walk: a machine's picture. */
export function MachinePicture() {
  return <Inlined class="drawing machine" svg={drawings.value["machine"] ?? ""} />;
}

/** The plan in small, the current station ringed. */
export function MiniPlan({ station }: { station: string }) {
  const svg = drawings.value["machine"] ?? "";
  return <Inlined class="drawing mini" svg={marked(svg, "station", station, "here")} />;
}

interface PlanProps {
  /** The current station. */
  here: string | undefined;
  /** Stations with nothing left to look at. */
  done: string[];
  /** Stations of this list, in walking order. */
  stations: { id: string; words: string }[];
  onStop: (station: string) => void;
}

/** The plan as a menu. The list of stations says the same in words, so a screen reader goes by that. */
export function Plan({ here, done, stations, onStop }: PlanProps) {
  const plain = drawings.value["machine"] ?? "";
  const stops = useMemo(() => stopsOf(plain), [plain]);
  return (
    <div class="plan" aria-hidden="true">
      <Inlined class="drawing machine walked" svg={plain} />
      {stations.map(({ id, words }, index) => {
        const stop = stops.places[id];
        if (!stop) return null;
        const look = id === here ? "here" : done.includes(id) ? "done" : "";
        return (
          <button
            key={id}
            type="button"
            tabIndex={-1}
            class={`stop-button ${look}`}
            style={{ left: `${(100 * stop.x) / stops.width}%`, top: `${(100 * stop.y) / stops.height}%` }}
            title={words}
            onClick={() => onStop(id)}
            data-test={`stop-${id}`}
          >
            <span>{index + 1}</span>
          </button>
        );
      })}
    </div>
  );
}

/** Where the drawing has its stations. */
function stopsOf(svg: string) {
  const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  const [, , width = 1, height = 1] = (root.getAttribute("viewBox") ?? "").split(" ").map(Number);
  const places: Record<string, { x: number; y: number }> = {};
  for (const group of root.querySelectorAll("[data-station]")) {
    const circle = group.querySelector("circle");
    const id = group.getAttribute("data-station");
    if (circle && id) places[id] = { x: Number(circle.getAttribute("cx")), y: Number(circle.getAttribute("cy")) };
  }
  return { width, height, places };
}

// Opens the list that is being walked, and shows the place in it that the address names.
import { useEffect, useState } from "preact/hooks";
import { asFault, type Fault } from "../calls";
import { Waiting } from "../parts/page";
import { to, turnTo } from "../route";
import { finished, openWalk, walk } from "../state";
import type { Walk } from "../types";
import { moveOn } from "../walking";
import { t } from "../words";
import { PointScreen } from "./point";
import { Summary } from "./summary";
import { WalkMap } from "./walk-map";

/** Straight to where the list stands: what a person wants who comes back to it. */
function Resume({ walk }: { walk: Walk }) {
  useEffect(() => moveOn(walk, walk.progress), []);
  return <Waiting screen="walk" fault={null} again={() => undefined} />;
}

export function WalkScreens({ machine, occasion, place }: { machine: string; occasion: string; place: string[] }) {
  const [fault, setFault] = useState<Fault | null>(null);
  const open = () => openWalk(machine, occasion).then(() => setFault(null), (thrown) => setFault(asFault(thrown)));

  useEffect(() => {
    // Back from a verdict leads to the verdict, not into a new walk.
    const end = finished.value;
    if (end?.machine === machine && end.occasion === occasion) return turnTo(...end.place);
    void open();
    // Coming back to the page may be the end of an interruption: the core knows.
    const shown = () => void (document.hidden || open());
    document.addEventListener("visibilitychange", shown);
    return () => {
      document.removeEventListener("visibilitychange", shown);
      walk.value = null;
    };
  }, [machine, occasion]);

  const now = walk.value;
  if (!now || now.machine !== machine || now.occasion !== occasion)
    return <Waiting screen="walk" fault={fault} again={open} back={{ href: to("machine", machine), words: t("to-machine") }} />;

  const [kind, point] = place;
  if (kind === "on") return <Resume walk={now} />;
  if (kind === "point" && point) return <PointScreen key={point} walk={now} id={point} />;
  if (kind === "summary") return <Summary walk={now} />;
  return <WalkMap walk={now} />;
}

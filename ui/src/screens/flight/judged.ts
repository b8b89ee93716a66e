// What the core makes of a plan while it is typed; an answer to an older plan is dropped.
import { useEffect, useState } from "preact/hooks";
import { asFault, call, type Fault } from "../../calls";
import type { FlightView } from "../../types";
import { language } from "../../words";
import type { Made } from "./plan";

/** Long enough that a number typed in one go is asked about once, ms. */
const PAUSE = 200;

export function useJudged(machine: string, { plan }: Made) {
  const [view, setView] = useState<FlightView | null>(null);
  const [fault, setFault] = useState<Fault | null>(null);
  const [turn, setTurn] = useState(0);
  // The moment alone makes no other plan.
  const { at: _, ...parts } = plan;
  useEffect(() => {
    let wanted = true;
    const ask = () =>
      call("flight-judge", { machine, plan }).then(
        (reply) => wanted && (setView(reply), setFault(null)),
        (thrown) => wanted && setFault(asFault(thrown)),
      );
    const pause = setTimeout(ask, PAUSE);
    return () => {
      wanted = false;
      clearTimeout(pause);
    };
  }, [machine, JSON.stringify(parts), turn, language.value]);
  return { view, fault, again: () => setTurn(turn + 1) };
}

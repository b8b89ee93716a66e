// One row about load, fuel and air: not worked out today, all within limits, or the gravest of what was found.
import { useEffect, useState } from "preact/hooks";
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { EmptyShape, StateShape } from "../../parts/shape";
import { to } from "../../route";
import type { FlightView } from "../../types";
import { language, t } from "../../words";

/** `occasion` is the list that waits to be signed, where one does. */
export function FlightRow({ machine, occasion }: { machine: string; occasion?: string }) {
  const form = useLoad("flight-form", { machine }).value;
  const [view, setView] = useState<FlightView | null>(null);
  useEffect(() => {
    if (!form?.today) return setView(null);
    let wanted = true;
    // What can't be told here, the screen itself tells.
    call("flight-judge", { machine, plan: form.plan }).then((reply) => wanted && setView(reply), () => undefined);
    return () => void (wanted = false);
  }, [JSON.stringify(form), language.value]);
  if (!form) return null;
  const gravest = view?.gravest;
  const state = gravest?.state ?? (view ? "fit" : "open");
  return (
    <ul class="rows flight-row">
      <li>
        <a href={to("machine", machine, "flight", ...(occasion ? [occasion] : []))} data-test="to-flight" data-state={form.today ? state : "open"}>
          {view ? <StateShape state={gravest?.state ?? "fit"} size={30} /> : <EmptyShape />}
          <span class="grow">
            <span class="strong">{t("flight")}</span>{" "}
            <span class="block">{!form.today ? t("flight-row-not-yet") : view && (gravest?.words ?? t("flight-row-well"))}</span>
          </span>
        </a>
      </li>
    </ul>
  );
}

// What was chosen while a log is taken in; kept while the app is open, so that no fault loses it.
import { useDraft } from "../../drafts";
import type { LogPreview, LogView, Mapping, Unit } from "../../types";
import { today } from "../../typed";

export interface Chosen {
  name: string;
  text: string;
  view: LogView;
  mapping: Mapping;
  /** What it tells, read so; none until the person said that it is to be read so. */
  preview: LogPreview | null;
  hours: string;
  on: string;
  outside: string;
  outsideUnit: Unit;
}

export const useChosen = (machine: string) => useDraft<Chosen | null>(`readings/${machine}`, null);

export function begun(name: string, text: string, view: LogView): Chosen {
  const outsideUnit = view.temperatures[0]?.code ?? "Cel";
  const hours = String(Math.round(view.hours * 10) / 10);
  return { name, text, view, mapping: view.mapping, preview: null, hours, on: today(), outside: "", outsideUnit };
}

/** Read so: the day and the air are taken from the file where it says them. */
export function confirmed(chosen: Chosen, preview: LogPreview): Chosen {
  const { on, outside } = preview;
  return {
    ...chosen,
    preview,
    on: on ?? chosen.on,
    ...(outside ? { outside: String(Math.round(outside.value * 10) / 10), outsideUnit: outside.unit } : {}),
  };
}

/** Time, a channel, or nothing. */
export type Holds = "time" | "" | Mapping["columns"][number]["channel"];

export function holds(mapping: Mapping, heading: string): Holds {
  return mapping.time === heading ? "time" : (mapping.columns.find((column) => column.heading === heading)?.channel ?? "");
}

export const unitsOf = (view: LogView, channel: Holds) => (channel === "speed" ? view.speeds : view.temperatures);

/** The mapping with one column read otherwise; the columns stay in the file's order. */
export function put({ view, mapping }: Chosen, heading: string, channel: Holds, unit?: Unit): Mapping {
  const others = mapping.columns.filter((column) => column.heading !== heading);
  const time = channel === "time" ? heading : mapping.time === heading ? "" : mapping.time;
  if (channel === "" || channel === "time") return { ...mapping, time, columns: others };
  const code = unit ?? unitsOf(view, channel)[0]?.code;
  const place = (column: { heading: string }) => view.columns.findIndex((one) => one.heading === column.heading);
  const columns = code ? [...others, { heading, channel, unit: code }].sort((a, b) => place(a) - place(b)) : others;
  return { ...mapping, time, columns };
}

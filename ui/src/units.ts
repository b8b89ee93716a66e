// The units that a person may read and type in, and how each is written.
import { start } from "./state";
import type { Unit, UnitChoice, UnitView } from "./types";

export type Kind = keyof UnitChoice;

/** Of each kind, those that instruments and manuals of the trade show. */
export const UNITS: Record<Kind, UnitView[]> = {
  mass: [
    { code: "kg", sign: "kg" },
    { code: "lb", sign: "lb" },
  ],
  volume: [
    { code: "L", sign: "L" },
    { code: "gal_us", sign: "US gal" },
    { code: "gal_br", sign: "imp gal" },
  ],
  speed: [
    { code: "km/h", sign: "km/h" },
    { code: "kt", sign: "kt" },
    { code: "m/s", sign: "m/s" },
  ],
  temperature: [
    { code: "Cel", sign: "°C" },
    { code: "degF", sign: "°F" },
  ],
  pressure: [
    { code: "hPa", sign: "hPa" },
    { code: "inHg", sign: "inHg" },
  ],
  height: [
    { code: "m", sign: "m" },
    { code: "ft", sign: "ft" },
  ],
  torque: [
    { code: "N.m", sign: "N·m" },
    { code: "lbf.in", sign: "lbf·in" },
    { code: "lbf.ft", sign: "lbf·ft" },
    { code: "kgf.cm", sign: "kgf·cm" },
    { code: "kgf.m", sign: "kgf·m" },
  ],
};

export const KINDS = Object.keys(UNITS) as Kind[];

/** Among units of one kind the person's own; else the first. Theirs for heights is none for the small lengths that
 * are measured at a machine, nor theirs for the air's pressure one for compression. */
export function ownOf(units: UnitView[]): Unit | undefined {
  const first = units[0]?.code;
  const kind = KINDS.find((one) => UNITS[one].some(({ code }) => code === first));
  const own = kind && start.value?.units[kind];
  return units.find(({ code }) => code === own)?.code ?? first;
}

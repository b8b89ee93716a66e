// What is typed of load, fuel, air and wind, before it is a plan; and what is taken over from an earlier one.
import { numberOf } from "../../parts/field";
import { figure } from "../../words";
import type { FlightForm, Quantity, Unit, UnitView, WindLimits } from "../../types";

export const PARTS = ["load", "mix", "fuel", "air", "wind"] as const;
export type Part = (typeof PARTS)[number];

/** Minutes are typed; hours are what the core knows. */
export type TypedUnit = Unit | "min";

/** One value as typed, and when; taken over from an earlier plan where nobody has typed it since.
 * What was taken over loses its digits with its unit: 71 kg are not 71 lb. */
export interface Typed {
  text: string;
  unit: TypedUnit;
  typed?: number;
}

export interface Values {
  pilot: Typed;
  machine: Typed;
  fuel: Typed;
  ballast: Typed;
  inTank: Typed;
  ratioInTank: Typed;
  addFuel: Typed;
  target: Typed;
  oil: Typed;
  minutes: Typed;
  reserve: Typed;
  elevation: Typed;
  setting: Typed;
  pressure: Typed;
  temperature: Typed;
  dew: Typed;
  mean: Typed;
  gust: Typed;
  mostMean: Typed;
  mostGust: Typed;
  mostFactor: Typed;
}
export type Name = keyof Values;

export interface Draft {
  /** Parts that are asked; the others are left out, with all that is typed in them. */
  asked: Record<Part, boolean>;
  values: Values;
  /** What is in the tank has no oil in it. */
  plain: boolean;
  /** How the pressure is known. */
  by: "altimeter" | "field";
}

export const FACTOR: Unit = "1";

/** The first draft: what may still hold is there, and what nobody was asked before is left out. */
export function draftOf(form: FlightForm): Draft {
  const { own, plan, units } = form;
  // On another day the wind is always asked anew, and what there is something to hold against; what today's plan
  // left out stays out.
  const fresh = !form.today;
  const first = (views: UnitView[]): Unit => views[0]?.code ?? "1";
  // Oil is measured in a small cup, whatever the tank is told in.
  const small = units.volume.find(({ code }) => code === "mL" && units.volume[0]?.code === "L")?.code ?? first(units.volume);
  const at = (quantity: Quantity | null | undefined, unit: TypedUnit): Typed => {
    if (!quantity) return { text: "", unit };
    if (quantity.unit === "h") return { text: figure(Math.round(quantity.value * 600) / 10), unit: "min" };
    return { text: figure(quantity.value), unit: quantity.unit };
  };
  const number = (value: number | null | undefined): Typed => ({ text: value ? figure(value) : "", unit: FACTOR });
  const [mass, volume, speed] = [first(units.mass), first(units.volume), first(units.speed)];
  const altimeter = plan.air && "altimeter" in plan.air.pressure ? plan.air.pressure.altimeter : null;
  const field = plan.air && "field" in plan.air.pressure ? plan.air.pressure.field : null;
  const limits: WindLimits | undefined = plan.wind?.limits ?? own.wind ?? undefined;
  const onBoard = plan.fuel?.on_board ?? plan.load?.loads.fuel ?? own.fuel;
  // Today's own word first; on another day what the machine's description says by now.
  const [weight, before] = [form.weight, plan.load?.loads.machine];
  return {
    asked: {
      load: (fresh && form.wing !== null) || plan.load !== undefined,
      mix: plan.mix !== undefined,
      fuel: (fresh && form.burns.length > 0) || plan.fuel !== undefined,
      air: plan.air !== undefined,
      wind: fresh || plan.wind !== undefined,
    },
    plain: plan.mix?.mix.ratio_in_tank === null,
    by: field ? "field" : "altimeter",
    values: {
      pilot: at(plan.load?.loads.pilot ?? own.pilot, mass),
      machine: at(form.today ? (before ?? weight) : (weight ?? before), mass),
      fuel: at(onBoard, volume),
      ballast: at(plan.load?.loads.ballast ?? own.ballast, mass),
      inTank: at(plan.mix?.mix.in_tank, volume),
      ratioInTank: number(plan.mix?.mix.ratio_in_tank ?? form.ratio ?? own.ratio),
      addFuel: at(plan.mix?.mix.add_fuel, volume),
      target: number(plan.mix?.mix.target_ratio ?? form.ratio ?? own.ratio),
      oil: at(plan.mix?.oil, small),
      minutes: at(plan.fuel?.flight_time, "min"),
      reserve: at(plan.fuel?.reserve ?? own.reserve, "min"),
      elevation: at(altimeter?.elevation ?? own.elevation, first(units.height)),
      setting: at(altimeter?.setting, first(units.pressure)),
      pressure: at(field, first(units.pressure)),
      temperature: at(plan.air?.temperature, first(units.temperature)),
      dew: at(plan.air?.dew_point, first(units.temperature)),
      mean: at(plan.wind?.wind.mean, speed),
      gust: at(plan.wind?.wind.gust, speed),
      mostMean: at(limits?.mean, speed),
      mostGust: at(limits?.gust, speed),
      mostFactor: number(limits?.gust_factor),
    },
  };
}

/** A draft from before, in which what nobody typed is as it is known by now. */
export function still(kept: Draft, known: Draft): Draft {
  const names = Object.keys(known.values) as Name[];
  const values = names.map((name) => [name, kept.values[name].typed ? kept.values[name] : known.values[name]]);
  return { ...kept, values: Object.fromEntries(values) as unknown as Values };
}

/** What is measured at the field, and holds for a while only. */
export const MEASURED: Record<"air" | "wind", Name[]> = {
  air: ["pressure", "setting", "temperature", "dew"],
  wind: ["mean", "gust"],
};

export const typedSince = ({ values }: Draft, names: Name[]) => names.some((name) => values[name].typed !== undefined);

/** As the core takes it; none while it is no number. */
export function quantityOf({ text, unit }: Typed): Quantity | null {
  const value = numberOf(text);
  if (value === null) return null;
  return unit === "min" ? { value: value / 60, unit: "h" } : { value, unit };
}

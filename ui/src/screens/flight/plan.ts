// A plan of what is typed whole, and what the other parts still lack.
import type { AirPlanned, FlightForm, FlightPlanned, FuelPlanned, LoadPlanned, MixPlanned, Quantity, WindPlanned } from "../../types";
import { t } from "../../words";
import { type Draft, MEASURED, type Name, type Part, PARTS, quantityOf, type Values } from "./draft";

export interface Made {
  plan: FlightPlanned;
  /** What a part that is asked lacks, in words; nothing of those that are whole. */
  lacks: Partial<Record<Part, string>>;
}

/** The labels of the values, by which what is missing is told. */
export const wordsOf = (name: Name) => t(`flight-value-${name}`);

export function made(draft: Draft, form: FlightForm): Made {
  const made: Made = { plan: { at: iso(new Date()) }, lacks: {} };
  for (const part of PARTS) {
    if (!draft.asked[part] || (part === "fuel" && !form.burns_fuel) || (part === "mix" && !form.mixes)) continue;
    const taker = new Taker(draft.values);
    const whole = READ[part](taker, draft, form);
    const lacks = taker.lacks();
    if (lacks || !whole) made.lacks[part] = lacks ?? "";
    else Object.assign(made.plan, { [part]: whole });
  }
  return made;
}

/** Takes values, and remembers which weren't there. */
class Taker {
  #missing: string[] = [];
  #wrong: string[] = [];

  constructor(private readonly values: Values) {}

  must(name: Name): Quantity {
    if (this.values[name].text.trim() === "") this.#missing.push(wordsOf(name));
    return this.may(name) ?? { value: 0, unit: "1" };
  }

  may(name: Name): Quantity | null {
    const { text } = this.values[name];
    if (text.trim() === "") return null;
    const quantity = quantityOf(this.values[name]);
    if (!quantity) this.#wrong.push(t("form-no-number", { words: wordsOf(name), typed: text }));
    return quantity;
  }

  number(name: Name): number | null {
    return this.may(name)?.value ?? null;
  }

  lacks(): string | undefined {
    const missing = this.#missing.length > 0 ? [t("flight-lacks", { values: this.#missing.join(", ") })] : [];
    const all = [...this.#wrong, ...missing];
    return all.length > 0 ? all.join(" ") : undefined;
  }
}

type Read = (taker: Taker, draft: Draft, form: FlightForm) => LoadPlanned | MixPlanned | FuelPlanned | AirPlanned | WindPlanned | null;

const READ: Record<Part, Read> = {
  load(taker, _, form): LoadPlanned | null {
    const [pilot, machine] = [taker.must("pilot"), taker.must("machine")];
    const fuel = form.burns_fuel ? taker.must("fuel") : { value: 0, unit: pilot.unit };
    const ballast = taker.may("ballast") ?? { value: 0, unit: pilot.unit };
    // Without the wing's range there is nothing to hold the sum against.
    return form.wing && { loads: { pilot, machine, fuel, ballast }, wing: form.wing };
  },
  mix(taker, draft): MixPlanned {
    const inTank = taker.must("inTank");
    // Of an empty tank nobody needs to know what was in it.
    const mixed = inTank.value > 0 && !draft.plain;
    const ratio = mixed ? taker.must("ratioInTank").value : null;
    const oil = taker.may("oil");
    return {
      mix: { in_tank: inTank, ratio_in_tank: ratio, target_ratio: taker.must("target").value, add_fuel: taker.must("addFuel") },
      ...(oil ? { oil } : {}),
    };
  },
  fuel: (taker, _, form): FuelPlanned => ({
    on_board: taker.must("fuel"),
    burns: form.burns,
    reserve: taker.must("reserve"),
    flight_time: taker.must("minutes"),
  }),
  air(taker, draft, form): AirPlanned {
    const byField = draft.by === "field";
    const pressure = byField
      ? { field: taker.must("pressure") }
      : { altimeter: { elevation: taker.must("elevation"), setting: taker.must("setting") } };
    const temperature = taker.must("temperature");
    const dew = taker.may("dew");
    const earlier = before(draft, form, form.plan.air, MEASURED.air);
    return { pressure, temperature, ...(dew ? { dew_point: dew } : {}), ...earlier };
  },
  wind: (taker, draft, form): WindPlanned => ({
    wind: { mean: taker.must("mean"), gust: taker.may("gust") },
    limits: { mean: taker.may("mostMean"), gust: taker.may("mostGust"), gust_factor: taker.number("mostFactor") },
    ...before(draft, form, form.plan.wind, MEASURED.wind),
  }),
};

/** When air or wind was measured: as it was typed, however long it lay there since; or as an earlier plan had it. */
function before({ values }: Draft, { plan }: FlightForm, part: AirPlanned | WindPlanned | undefined, names: Name[]) {
  const typed = Math.max(...names.map((name) => values[name].typed ?? 0));
  if (typed > 0) return { measured: iso(new Date(typed)) };
  return part ? { measured: part.measured ?? plan.at } : {};
}

/** A moment as this device's clock has it, with its offset from Greenwich. */
function iso(here: Date): string {
  const ahead = -here.getTimezoneOffset();
  const two = (count: number) => String(Math.trunc(Math.abs(count))).padStart(2, "0");
  const local = new Date(here.getTime() + ahead * 60_000).toISOString().slice(0, 19);
  return `${local}${ahead < 0 ? "-" : "+"}${two(ahead / 60)}:${two(ahead % 60)}`;
}


// How long the fuel lasts, by what this machine has burned before.
import { to } from "../../route";
import type { FlightForm } from "../../types";
import { t } from "../../words";
import { Amount, type Sheet } from "./amount";

export function FuelPart({ form, sheet }: { form: FlightForm; sheet: Sheet }) {
  const minutes = { code: "min", sign: t("flight-minutes") } as const;
  return (
    <>
      <div class="beside amounts">
        <Amount sheet={sheet} name="fuel" units={form.units.volume} />
        <Amount sheet={sheet} name="minutes" units={[minutes]} />
        <Amount sheet={sheet} name="reserve" units={[minutes, ...form.units.volume]} />
      </div>
      <p class="soft" data-test="flight-burns">
        {form.burns_words} <a href={to("machine", form.machine, "log")}>{t("flight-to-log")}</a>
      </p>
    </>
  );
}

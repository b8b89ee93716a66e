// The wind against what the pilot and the school have set.
import { Caution } from "../../parts/cautions";
import type { FlightForm, Quantity, WindLimits } from "../../types";
import { signOf } from "../../units";
import { figure, t } from "../../words";
import { Amount, type Sheet } from "./amount";
import { MEASURED, typedSince } from "./draft";
import { Measured } from "./measured";

export function WindPart({ form, sheet }: { form: FlightForm; sheet: Sheet }) {
  const { speed } = form.units;
  return (
    <>
      <Measured part={form.plan.wind} at={form.plan.at} typed={typedSince(sheet.draft, MEASURED.wind)} />
      <div class="beside amounts">
        <Amount sheet={sheet} name="mean" units={speed} />
        <Amount sheet={sheet} name="gust" units={speed} />
      </div>
      <h3>{t("flight-own-limits")}</h3>
      <div class="beside amounts">
        <Amount sheet={sheet} name="mostMean" units={speed} />
        <Amount sheet={sheet} name="mostGust" units={speed} />
        <Amount sheet={sheet} name="mostFactor" />
      </div>
      {form.school_wind && <School limits={form.school_wind} />}
      <Caution words={t("flight-caution-weather")} />
    </>
  );
}

/** The school's stand beside the pilot's own; the stricter of the two holds, and the core says which. */
function School({ limits }: { limits: WindLimits }) {
  const all = [
    limits.mean && t("flight-school-mean", { value: speedOf(limits.mean) }),
    limits.gust && t("flight-school-gust", { value: speedOf(limits.gust) }),
    limits.gust_factor && t("flight-school-factor", { value: figure(limits.gust_factor) }),
  ].filter(Boolean);
  return <p class="school-limits" data-test="flight-school"><span class="strong">{t("flight-school")}</span> {all.join(" · ")}</p>;
}

function speedOf({ value, unit }: Quantity): string {
  return `${figure(value)}\u00a0${signOf("speed", unit)}`;
}

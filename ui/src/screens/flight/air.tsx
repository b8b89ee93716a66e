// How thin the air is: from the altimeter's setting, or from a barometer at the field.
import type { FlightForm } from "../../types";
import { t } from "../../words";
import { Amount, type Sheet } from "./amount";
import { MEASURED, typedSince } from "./draft";
import { Measured } from "./measured";

export function AirPart({ form, sheet }: { form: FlightForm; sheet: Sheet }) {
  const { draft, put } = sheet;
  const { height, pressure, temperature } = form.units;
  return (
    <>
      <Measured part={form.plan.air} at={form.plan.at} typed={typedSince(draft, MEASURED.air)} />
      <fieldset class="ways-of-pressure">
        <legend>{t("flight-by")}</legend>
        {(["altimeter", "field"] as const).map((by) => (
          <label key={by} class="choice">
            <input type="radio" name="pressure-by" checked={draft.by === by} onChange={() => put({ by })} data-test={`flight-by-${by}`} />
            <span class="grow">{t(`flight-by-${by}`)}</span>
          </label>
        ))}
      </fieldset>
      <div class="beside amounts">
        {draft.by === "altimeter" ? (
          <>
            <Amount sheet={sheet} name="elevation" units={height} signed />
            <Amount sheet={sheet} name="setting" units={pressure} long />
          </>
        ) : (
          <Amount sheet={sheet} name="pressure" units={pressure} long />
        )}
        <Amount sheet={sheet} name="temperature" units={temperature} signed />
        <Amount sheet={sheet} name="dew" units={temperature} signed />
      </div>
    </>
  );
}

// Fuel that the flight burned, for whoever measured it: what later flights' endurance rests on.
import { Field } from "../../parts/field";
import { number, orNone } from "../../typed";
import type { Quantity, Unit } from "../../types";
import { ownOf, unitsOf } from "../../units";
import { t } from "../../words";

export interface BurnedDraft {
  text: string;
  unit: Unit;
}

export const ownVolume = (): Unit => ownOf(unitsOf("volume")) ?? "L";

/** None where nobody measured. */
export function burnedOf({ text, unit }: BurnedDraft): Quantity | null {
  const value = orNone(text, (typed) => number(typed, t("log-burned")));
  return value === null ? null : { value, unit };
}

export function Burned({ burned, onBurned }: { burned: BurnedDraft; onBurned: (burned: BurnedDraft) => void }) {
  return (
    <details open={burned.text !== ""}>
      <summary data-test="log-burned-open">{t("log-burned-open")}</summary>
      <div class="reading-pair">
        <Field
          words={t("log-burned")}
          hint={t("log-burned-hint")}
          value={burned.text}
          onValue={(text) => onBurned({ ...burned, text })}
          test="log-burned"
          input={{ inputMode: "decimal" }}
        />
        <label class="field">
          {t("measure-unit")}
          <select value={burned.unit} onChange={(event) => onBurned({ ...burned, unit: event.currentTarget.value as Unit })} data-test="log-burned-unit">
            {unitsOf("volume").map(({ code, sign }) => (
              <option key={code} value={code}>{sign}</option>
            ))}
          </select>
        </label>
      </div>
    </details>
  );
}

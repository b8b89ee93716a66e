// What an interval is asked for: the chance of an unseen failure that is borne, and the interval in force.
import { Field, numberOf } from "../../parts/field";
import { t } from "../../words";

const CHANCES = [0.001, 0.005, 0.01, 0.02, 0.05, 0.1];

export interface Asked {
  chance: number | null;
  in_force: string;
}

export const NOTHING_ASKED: Asked = { chance: null, in_force: "" };

/** As the core takes it; what is no number isn't asked for. */
export const inForce = ({ in_force }: Asked) => numberOf(in_force);

export function AskedFields({ asked, chance, onAsked }: { asked: Asked; chance: number; onAsked: (asked: Asked) => void }) {
  const now = asked.chance ?? chance;
  const chances = CHANCES.includes(now) ? CHANCES : [...CHANCES, now].sort((a, b) => a - b);
  return (
    <details>
      <summary data-test="life-ask">{t("life-ask")}</summary>
      <div class="beside numbers">
        <label class="field">
          {t("life-chance-borne")}
          <select value={String(now)} onChange={(event) => onAsked({ ...asked, chance: Number(event.currentTarget.value) })} data-test="life-chance">
            {chances.map((one) => <option key={one} value={String(one)}>{t("share", { percent: 100 * one })}</option>)}
          </select>
        </label>
        <Field
          words={t("life-in-force-hours")}
          value={asked.in_force}
          onValue={(in_force) => onAsked({ ...asked, in_force })}
          test="life-in-force"
          input={{ inputMode: "decimal" }}
        />
      </div>
    </details>
  );
}

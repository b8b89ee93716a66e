// One value and its unit: typed on the big keys or the keyboard, its unit changed where it stands.
import { useId } from "preact/hooks";
import type { UnitView } from "../../types";
import { t } from "../../words";
import { type Draft, type Name, type TypedUnit, type Values } from "./draft";
import { TYPED } from "./pad";
import { wordsOf } from "./plan";

export interface Sheet {
  draft: Draft;
  put: (change: Partial<Draft>) => void;
  /** Whether the big keys type, and no keyboard is to come up. */
  keys: boolean;
}

interface AmountProps {
  sheet: Sheet;
  name: Name;
  /** Its units; none where it is a plain number. */
  units?: (UnitView | { code: "min"; sign: string })[];
  hint?: string | undefined;
  /** Whether it may lie below nought. */
  signed?: boolean;
  /** Whether it has more digits than others. */
  long?: boolean;
}

/** Longer than any reading. */
const LONGEST = 9;

export function Amount({ sheet, name, units = [], hint, signed = false, long = false }: AmountProps) {
  const { draft, put, keys } = sheet;
  const id = useId();
  const typed = draft.values[name];
  const change = (one: Values[Name]) => put({ values: { ...draft.values, [name]: one } });
  // A unit that nobody would choose now stays what it was when the value was typed.
  const known = units.some(({ code }) => code === typed.unit) || units.length === 0;
  const words = wordsOf(name);
  return (
    <div class={`field amount ${long ? "long" : ""}`}>
      <label for={id}>{words}</label>
      {hint && <p id={`${id}-hint`} class="soft">{hint}</p>}
      <div class="amount-line">
        <input
          id={id}
          inputMode={keys ? "none" : "decimal"}
          autocomplete="off"
          maxLength={LONGEST}
          value={typed.text}
          onInput={(event) => change({ ...typed, text: event.currentTarget.value.replace(/[^\d.,−-]/g, ""), typed: Date.now() })}
          aria-describedby={hint ? `${id}-hint` : undefined}
          data-kind={TYPED}
          data-signed={signed ? "yes" : undefined}
          data-test={`flight-${name}`}
        />
        {units.length > 1 || !known ? (
          <select
            class="unit"
            aria-label={t("flight-unit", { value: words })}
            value={typed.unit}
            onChange={(event) => change(inUnit(typed, event.currentTarget.value as TypedUnit))}
            data-test={`flight-${name}-unit`}
          >
            {!known && <option value={typed.unit}>{typed.unit}</option>}
            {units.map(({ code, sign }) => (
              <option key={code} value={code}>{sign}</option>
            ))}
          </select>
        ) : (
          units[0] && <span class="unit">{units[0].sign}</span>
        )}
      </div>
    </div>
  );
}

/** What was taken over was never read in the new unit; what was typed was meant in it. */
const inUnit = (typed: Values[Name], unit: TypedUnit) => (typed.typed ? { ...typed, unit } : { text: "", unit, typed: Date.now() });

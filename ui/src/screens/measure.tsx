// A measured point: typed on big keys or the keyboard, judged by the core at every digit.
import { useEffect, useId, useState } from "preact/hooks";
import { call } from "../calls";
import { useDraft } from "../drafts";
import { BandBar } from "../parts/band";
import { numberOf } from "../parts/field";
import { Keys } from "../parts/keys";
import { MeaningShape } from "../parts/shape";
import type { Given, GivenView, JudgedView, PointView, Quantity, Unit, ValueAsk } from "../types";
import { typedOf } from "../typed";
import { ownOf } from "../units";
import { decimalMark, t } from "../words";

interface MeasureProps {
  walk: string;
  point: PointView;
  ask: ValueAsk;
  given: GivenView | null;
  busy: boolean;
  /** `kept` is called once the answer is durable: only then is what was typed forgotten. */
  onAnswer: (given: Given, kept: () => void) => void;
}

const LONGEST = 9;

export function Measure({ walk, point, ask, given, busy, onAnswer }: MeasureProps) {
  const before = given && "value" in given.given ? given.given.value : null;
  const draft = `${walk}/${point.id}`;
  const [typed, setTyped, doneTyped] = useDraft(`${draft}/value`, typedOf(before?.value));
  const [unit, setUnit, doneUnit] = useDraft<Unit | undefined>(`${draft}/unit`, before?.unit ?? ownOf(ask.units));
  const number = numberOf(typed);
  const value = number !== null && unit ? { value: number, unit } : null;
  const judged = useJudged(walk, point.id, value);
  const id = useId();
  const known = ask.low !== null || ask.high !== null;
  const below0 = ask.units.some(({ code }) => code === "Cel" || code === "degF");

  const enter = () => {
    if (!value) return;
    onAnswer({ value }, () => {
      doneTyped();
      doneUnit();
    });
  };
  const add = (key: string) => {
    if (key === "−") setTyped(typed.startsWith("-") ? typed.slice(1) : `-${typed}`);
    else if (typed.length < LONGEST) setTyped(typed + key);
  };

  return (
    <form
      class="measure"
      onSubmit={(event) => {
        event.preventDefault();
        enter();
      }}
    >
      <div class="reading">
        <label class="unseen" for={id}>{t("measure-value", { band: ask.words })}</label>
        <input
          id={id}
          class="digits"
          // The device's own keyboard would cover our keys, which are the bigger ones.
          inputMode="none"
          autocomplete="off"
          maxLength={LONGEST + 1}
          value={typed}
          onInput={(event) => setTyped(event.currentTarget.value.replace(/[^\d.,−-]/g, ""))}
          aria-describedby={`${id}-judged`}
          data-test="value"
        />
        <Units units={ask.units} unit={unit} onUnit={setUnit} />
      </div>
      {known && <BandBar low={ask.low} high={ask.high} value={judged?.value ?? null} means={judged?.means} />}
      <p id={`${id}-judged`} class="judged" role="status" data-test="judged" data-means={judged?.means}>
        {judged ? (
          <>
            <MeaningShape means={judged.means} size={20} said />
            <span>
              {judged.words} {known && <span class="soft">{t("measure-band", { band: ask.words })}</span>}
            </span>
          </>
        ) : (
          <span class="soft">{known && t("measure-band", { band: ask.words })}</span>
        )}
      </p>
      {/* A number that no manual confirms says so where it is used, and not only where one scrolls to. */}
      <p class="unconfirmed" data-test="source">{ask.source}</p>
      <Keys
        onKey={add}
        onErase={() => setTyped(typed.slice(0, -1))}
        left={decimalMark()}
        {...(below0 ? { right: "−" } : {})}
        enter={
          <button type="submit" class="go" aria-disabled={!value || busy} data-test="enter">
            {t("measure-enter")}
          </button>
        }
      />
    </form>
  );
}

function Units({ units, unit, onUnit }: { units: ValueAsk["units"]; unit: Unit | undefined; onUnit: (unit: Unit) => void }) {
  if (units.length < 2) return <span class="unit">{units[0]?.sign}</span>;
  return (
    <select class="unit" aria-label={t("measure-unit")} value={unit} onChange={(e) => onUnit(e.currentTarget.value as Unit)} data-test="unit">
      {units.map(({ code, sign }) => (
        <option key={code} value={code}>
          {sign}
        </option>
      ))}
    </select>
  );
}

/** What the core makes of the value; the answer to an older question is dropped. */
function useJudged(walk: string, point: string, value: Quantity | null): JudgedView | null {
  const [judged, setJudged] = useState<JudgedView | null>(null);
  useEffect(() => {
    if (!value) return setJudged(null);
    let wanted = true;
    // While typing a half-finished number may be refused; entering it says why.
    call("judge", { walk, point, value }).then((reply) => wanted && setJudged(reply), () => wanted && setJudged(null));
    return () => void (wanted = false);
  }, [walk, point, value?.value, value?.unit]);
  return judged;
}

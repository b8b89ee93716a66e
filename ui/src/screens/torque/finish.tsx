// All nuts have clicked: how far each turned, what the tool read, and why it was used if it may not be.
import { useEffect, useRef } from "preact/hooks";
import type { Fault } from "../../calls";
import { Field, TextArea } from "../../parts/field";
import type { TorqueAsk, Unit } from "../../types";
import { t } from "../../words";
import type { BenchDraft } from "./bench";
import { turnWords } from "./eighths";

/** The form's id: its button lies in the thumb's reach, outside it. */
export const FINISH = "torque-finish";

interface FinishProps {
  draft: BenchDraft;
  put: (change: Partial<BenchDraft>) => void;
  ask: TorqueAsk;
  unit: Unit | undefined;
  standing: string;
  fault: Fault | null;
  onDone: () => void;
}

export function Finish({ draft, put, ask, unit, standing, fault, onDone }: FinishProps) {
  const form = useRef<HTMLFormElement>(null);
  const moved = useRef<HTMLOListElement>(null);
  const read = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // Where the words were scrolled while the nuts clicked doesn't matter now. The focus goes to what is to
    // be read, not to the button: a key held down mustn't write it.
    form.current?.scrollIntoView({ block: "nearest" });
    moved.current?.focus({ preventScroll: true });
  }, []);
  // What is doubted is shown beside the doubt, and the reason asked for below it.
  useEffect(() => {
    if (fault) read.current?.scrollIntoView({ block: "start" });
  }, [fault]);
  // A reason is asked where the core will want one: for a refused tool, and for a reading that it doubts.
  const reason = standing === "refused" || fault?.kind === "torque-slip" || fault?.kind === "tool-refused" || draft.reason !== "";
  return (
    <form
      ref={form}
      id={FINISH}
      class="finish"
      onSubmit={(event) => {
        event.preventDefault();
        onDone();
      }}
    >
      <ol ref={moved} tabIndex={-1} class="moved" aria-label={t("torque-moved")} data-test="moved">
        {Array.from({ length: ask.nuts }, (_, index) => (
          <li key={index}>
            <span class="soft">{t("torque-nut-number", { nut: index + 1 })}</span> {turnWords(draft.eighths[index] ?? 0)}
          </li>
        ))}
      </ol>
      <div class="reading-pair" ref={read}>
        <Field words={t("torque-reading")} value={draft.reading} onValue={(reading) => put({ reading })} test="reading" input={{ inputMode: "decimal" }} />
        <label class="field">
          {t("measure-unit")}
          <select value={unit} onChange={(event) => put({ readingUnit: event.currentTarget.value as Unit })} data-test="reading-unit">
            {ask.units.map(({ code, sign }) => (
              <option key={code} value={code}>
                {sign}
              </option>
            ))}
          </select>
        </label>
      </div>
      {reason && <TextArea words={t("torque-reason")} hint={t("torque-reason-hint")} value={draft.reason} onValue={(reason) => put({ reason })} test="reason" rows={2} />}
    </form>
  );
}

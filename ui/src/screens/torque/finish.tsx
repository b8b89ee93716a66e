// All nuts have clicked: what the tool read, why it was used if it may not be, and writing it down.
import type { Fault } from "../../calls";
import { FaultNote } from "../../parts/fault";
import { Field, TextArea } from "../../parts/field";
import type { TorqueAsk, Unit } from "../../types";
import { t } from "../../words";
import type { BenchDraft } from "./bench";
import { turnWords } from "./eighths";

interface FinishProps {
  draft: BenchDraft;
  put: (change: Partial<BenchDraft>) => void;
  ask: TorqueAsk;
  unit: Unit | undefined;
  standing: string;
  fault: Fault | null;
  busy: boolean;
  onDone: () => void;
}

export function Finish({ draft, put, ask, unit, standing, fault, busy, onDone }: FinishProps) {
  // A reason is asked where the core will want one: for a refused tool, and for a reading that it doubts.
  const reason = standing === "refused" || fault?.kind === "torque-slip" || fault?.kind === "tool-refused" || draft.reason !== "";
  return (
    <form
      class="finish"
      onSubmit={(event) => {
        event.preventDefault();
        onDone();
      }}
    >
      <p class="strong">{t("torque-all")}</p>
      <ol class="moved" aria-label={t("torque-moved")} data-test="moved">
        {Array.from({ length: ask.nuts }, (_, index) => (
          <li key={index}>
            <span class="soft">{t("torque-nut-number", { nut: index + 1 })}</span> {turnWords(draft.eighths[index] ?? 0)}
          </li>
        ))}
      </ol>
      <div class="reading-pair">
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
      <FaultNote fault={fault} />
      <button type="submit" class="go" aria-disabled={busy} data-test="torque-done">
        {t("measure-enter")}
      </button>
    </form>
  );
}

// Something between the wrench and the nut that makes the lever longer.
import { Field } from "../../parts/field";
import type { Unit } from "../../types";
import { t } from "../../words";
import { halfTyped, type AdapterDraft } from "./bench";

export function AdapterForm({ draft, onDraft }: { draft: AdapterDraft; onDraft: (draft: AdapterDraft) => void }) {
  const put = (change: Partial<AdapterDraft>) => onDraft({ ...draft, ...change });
  const decimal = { inputMode: "decimal" } as const;
  return (
    <details open={draft.fitted}>
      <summary data-test="adapter">{t("adapter")}</summary>
      <div class="part">
        <label class="choice">
          <input type="checkbox" checked={draft.fitted} onChange={(event) => put({ fitted: event.currentTarget.checked })} data-test="adapter-fitted" />
          <span class="grow">{t("adapter-fitted")}</span>
        </label>
        {draft.fitted && (
          <div class="beside numbers">
            <Field words={t("adapter-lever")} value={draft.lever} onValue={(lever) => put({ lever })} test="adapter-lever" input={decimal} />
            <Field words={t("adapter-length")} value={draft.length} onValue={(length) => put({ length })} test="adapter-length" input={decimal} />
            <label class="field">
              {t("measure-unit")}
              <select value={draft.unit} onChange={(event) => put({ unit: event.currentTarget.value as Unit })} data-test="adapter-unit">
                <option value="mm">mm</option>
                <option value="in">in</option>
              </select>
            </label>
            <Field words={t("adapter-angle")} value={draft.angle} onValue={(angle) => put({ angle })} test="adapter-angle" input={decimal} />
          </div>
        )}
        {halfTyped(draft) && <p class="strong">{t("adapter-half")}</p>}
      </div>
    </details>
  );
}

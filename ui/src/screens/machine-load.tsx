// What the wing may carry and what the machine weighs, for the sum before a flight.
import { Field } from "../parts/field";
import { number, typedOf } from "../typed";
import type { Machine, Quantity, Range, Unit, WingLoad } from "../types";
import { ownOf, unitsOf } from "../units";
import { t } from "../words";

export interface LoadDraft {
  weight: string;
  low: string;
  high: string;
  freeLow: string;
  freeHigh: string;
  unit: Unit;
  document: string;
  page: string;
}

export function loadOf(machine: Machine | null): LoadDraft {
  const wing = machine?.wing_load;
  const range = wing?.with_motor;
  const unit = range?.low.unit ?? machine?.weight?.unit ?? ownOf(unitsOf("mass")) ?? "kg";
  return {
    weight: typedOf(machine?.weight),
    low: typedOf(range?.low),
    high: typedOf(range?.high),
    freeLow: typedOf(wing?.without_motor?.low),
    freeHigh: typedOf(wing?.without_motor?.high),
    unit,
    document: wing?.document ?? "",
    page: wing?.page ?? "",
  };
}

/** As it is signed; nothing of what was left empty. Half a range is told apart from none. */
export function describedLoad(draft: LoadDraft): Pick<Machine, "wing_load" | "weight"> {
  const { unit } = draft;
  const one = (typed: string, words: string): Quantity => ({ value: number(typed, words), unit });
  const range = (low: string, high: string, words: string): Range | undefined => {
    if (!low.trim() && !high.trim()) return undefined;
    return { low: one(low, `${words}, ${t("form-wing-low")}`), high: one(high, `${words}, ${t("form-wing-high")}`) };
  };
  const with_motor = range(draft.low, draft.high, t("form-wing-with"));
  const without_motor = range(draft.freeLow, draft.freeHigh, t("form-wing-without"));
  if (!with_motor && (without_motor || draft.document.trim() || draft.page.trim()))
    throw { kind: "no-range", message: t("form-wing-only-free"), hint: t("form-wing-only-free-hint") };
  const wing: WingLoad | undefined = with_motor && {
    with_motor,
    ...(without_motor ? { without_motor } : {}),
    document: draft.document.trim(),
    page: draft.page.trim(),
  };
  return {
    ...(wing ? { wing_load: wing } : {}),
    ...(draft.weight.trim() ? { weight: one(draft.weight, t("form-weight")) } : {}),
  };
}

export function LoadFields({ load, onLoad }: { load: LoadDraft; onLoad: (load: LoadDraft) => void }) {
  const put = (change: Partial<LoadDraft>) => onLoad({ ...load, ...change });
  const decimal = { inputMode: "decimal" } as const;
  return (
    <details>
      <summary data-test="machine-load">{t("form-load")}</summary>
      <p class="soft">{t("form-load-what")}</p>
      <div class="beside numbers">
        <Field words={t("form-weight")} hint={t("form-weight-hint")} value={load.weight} onValue={(weight) => put({ weight })} test="weight" input={decimal} />
        <label class="field">
          {t("measure-unit")}
          <select value={load.unit} onChange={(event) => put({ unit: event.currentTarget.value as Unit })} data-test="load-unit">
            {unitsOf("mass").map(({ code, sign }) => (
              <option key={code} value={code}>{sign}</option>
            ))}
          </select>
        </label>
      </div>
      <fieldset>
        <legend>{t("form-wing-with")}</legend>
        <div class="beside numbers">
          <Field words={t("form-wing-low")} value={load.low} onValue={(low) => put({ low })} test="wing-low" input={decimal} />
          <Field words={t("form-wing-high")} value={load.high} onValue={(high) => put({ high })} test="wing-high" input={decimal} />
        </div>
      </fieldset>
      <fieldset>
        <legend>{t("form-wing-without")}</legend>
        <p class="soft">{t("form-wing-without-hint")}</p>
        <div class="beside numbers">
          <Field words={t("form-wing-low")} value={load.freeLow} onValue={(freeLow) => put({ freeLow })} test="wing-free-low" input={decimal} />
          <Field words={t("form-wing-high")} value={load.freeHigh} onValue={(freeHigh) => put({ freeHigh })} test="wing-free-high" input={decimal} />
        </div>
      </fieldset>
      <Field words={t("form-wing-document")} value={load.document} onValue={(document) => put({ document })} test="wing-document" />
      <Field words={t("limit-page")} value={load.page} onValue={(page) => put({ page })} test="wing-page" />
    </details>
  );
}

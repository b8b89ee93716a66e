// Petrol and oil: what to add to what is in the tank, in digits to be read at arm's length.
import { Caution } from "../../parts/cautions";
import { numberOf } from "../../parts/field";
import type { FlightForm, FlightPourView } from "../../types";
import { figure, t } from "../../words";
import { Amount, type Sheet } from "./amount";

export function MixPart({ form, sheet, pour }: { form: FlightForm; sheet: Sheet; pour: FlightPourView | null }) {
  const { draft, put } = sheet;
  const { volume } = form.units;
  const poured = draft.values.oil.text.trim() !== "";
  const empty = numberOf(draft.values.inTank.text) === 0;
  return (
    <>
      <Caution words={t("flight-caution-pour")} />
      {pour && !poured && (
        <div class="pour">
          <p data-test="flight-pour">
            <span class="soft">{t("flight-pour")}</span> <span class="huge num">{pour.words}</span>
          </p>
          <button type="button" class="small" onClick={() => put({ values: { ...draft.values, oil: { text: figure(pour.oil.value), unit: pour.oil.unit, typed: Date.now() } } })} data-test="flight-poured">
            {t("flight-poured")}
          </button>
        </div>
      )}
      <p class={form.ratio_words ? "soft" : "unconfirmed"}>{form.ratio_words ?? t("flight-no-ratio")}</p>
      <div class="beside amounts">
        <Amount sheet={sheet} name="inTank" units={volume} />
        <Amount sheet={sheet} name="addFuel" units={volume} />
        <Amount sheet={sheet} name="target" />
        {!empty && !draft.plain && <Amount sheet={sheet} name="ratioInTank" />}
      </div>
      {!empty && (
        <label class="choice">
          <input type="checkbox" checked={draft.plain} onChange={(event) => put({ plain: event.currentTarget.checked })} data-test="flight-plain" />
          <span class="grow">{t("flight-plain")}</span>
        </label>
      )}
      <Amount sheet={sheet} name="oil" units={volume} hint={t("flight-oil-hint")} />
    </>
  );
}

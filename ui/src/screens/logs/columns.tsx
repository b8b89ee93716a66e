// How the columns are read: as remembered, in one look; as guessed, column by column. Each can be changed.
import { useState } from "preact/hooks";
import { call } from "../../calls";
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page } from "../../parts/page";
import type { LogColumn, TimeForm, Unit } from "../../types";
import { t } from "../../words";
import { confirmed, holds, put, unitsOf, type Chosen, type Holds } from "./chosen";

interface ColumnsProps {
  machine: string;
  chosen: Chosen;
  back: { href: string; words: string };
  onChosen: (chosen: Chosen) => void;
  onAnew: () => void;
}

export function Columns({ machine, chosen, back, onChosen, onAnew }: ColumnsProps) {
  const { name, text, view, mapping } = chosen;
  const { busy, fault, act } = useAct();
  const [open, setOpen] = useState(!view.remembered);
  const read = () => act(async () => onChosen(confirmed(chosen, await call("log-preview", { machine, text, mapping }))));
  const change = (next: Chosen["mapping"]) => onChosen({ ...chosen, mapping: next });
  return (
    <Page
      screen="readings-columns"
      title={t(view.remembered ? "readings-remembered" : "readings-guessed")}
      over={name}
      back={back}
      foot={
        <>
          <FaultNote fault={fault} />
          <button type="button" class="go" aria-disabled={busy} onClick={read} data-test="mapping-confirm">
            {t(busy ? "readings-busy" : "readings-confirm")}
          </button>
        </>
      }
    >
      <p data-test="mapping" data-remembered={view.remembered}>{t(view.remembered ? "readings-remembered-what" : "readings-guessed-what")}</p>
      {open ? (
        view.columns.map((column, index) => <ColumnFields key={index} at={index} column={column} chosen={chosen} onMapping={change} />)
      ) : (
        <>
          <ul class="rows">
            {view.columns.map((column, index) => (
              <li key={index} class="column-said" data-test={`column-said-${index}`}>
                <span class="strong">{column.heading}</span> <span>{said(chosen, column)}</span>
              </li>
            ))}
          </ul>
          <button type="button" onClick={() => setOpen(true)} data-test="mapping-change">{t("readings-change")}</button>
        </>
      )}
      <p class="soft">{t("readings-signs", { separator: mapping.separator === "\t" ? "tab" : mapping.separator, decimal: mapping.decimal })}</p>
      <button type="button" class="as-link" onClick={onAnew} data-test="readings-other">{t("readings-other")}</button>
    </Page>
  );
}

/** How a column is read, in words. */
function said({ view, mapping }: Chosen, { heading }: LogColumn): string {
  const channel = holds(mapping, heading);
  if (channel === "") return t("readings-left-out");
  if (channel === "time") return `${t("readings-time")}: ${view.time_forms.find(({ id }) => id === mapping.time_form)?.words ?? ""}`;
  const unit = mapping.columns.find((column) => column.heading === heading)?.unit;
  const sign = unitsOf(view, channel).find(({ code }) => code === unit)?.sign ?? "";
  return `${view.channels.find(({ id }) => id === channel)?.words ?? channel}, ${sign}`;
}

interface FieldsProps {
  at: number;
  column: LogColumn;
  chosen: Chosen;
  onMapping: (mapping: Chosen["mapping"]) => void;
}

function ColumnFields({ at, column: { heading, sample }, chosen, onMapping }: FieldsProps) {
  const { view, mapping } = chosen;
  const channel = holds(mapping, heading);
  const unit = mapping.columns.find((column) => column.heading === heading)?.unit;
  return (
    <fieldset class={`column ${channel === "" ? "" : "read"}`} data-test={`column-${at}`} data-holds={channel}>
      <legend class="mono">{heading}</legend>
      <p class="mono soft">{sample.join(" · ")}</p>
      <div class={channel === "time" || channel === "" ? "stack" : "holds"}>
        <label class="field">
          {t("readings-holds")}
          <select value={channel} onChange={(event) => onMapping(put(chosen, heading, event.currentTarget.value as Holds))} data-test={`holds-${at}`}>
            <option value="">{t("readings-left-out")}</option>
            <option value="time">{t("readings-time")}</option>
            {view.channels.map(({ id, words }) => <option key={id} value={id}>{words}</option>)}
          </select>
        </label>
        {channel === "time" && (
          <label class="field">
            {t("readings-time-form")}
            <select
              value={mapping.time_form}
              onChange={(event) => onMapping({ ...mapping, time_form: event.currentTarget.value as TimeForm })}
              data-test="time-form"
            >
              {view.time_forms.map(({ id, words }) => <option key={id} value={id}>{words}</option>)}
            </select>
          </label>
        )}
        {channel !== "" && channel !== "time" && (
          <label class="field">
            {t("measure-unit")}
            <select value={unit} onChange={(event) => onMapping(put(chosen, heading, channel, event.currentTarget.value as Unit))} data-test={`unit-${at}`}>
              {unitsOf(view, channel).map(({ code, sign }) => <option key={code} value={code}>{sign}</option>)}
            </select>
          </label>
        )}
      </div>
    </fieldset>
  );
}

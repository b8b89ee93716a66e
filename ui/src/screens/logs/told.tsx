// What a log tells, read so; when it was flown, how warm it was; and the signature.
import { call } from "../../calls";
import { Field } from "../../parts/field";
import { Page } from "../../parts/page";
import { turnTo } from "../../route";
import type { LogPreview, Quantity, Unit } from "../../types";
import { number, orNone } from "../../typed";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import type { Chosen } from "./chosen";

interface ToldProps {
  machine: string;
  chosen: Chosen;
  back: { href: string; words: string };
  onChosen: (chosen: Chosen) => void;
  onDone: () => void;
  onAnew: () => void;
}

export function Told({ machine, chosen, back, onChosen, onDone, onAnew }: ToldProps) {
  const { name, text, mapping, preview, view } = chosen;
  const change = (next: Partial<Chosen>) => onChosen({ ...chosen, ...next });
  const sign = async (pin: string) => {
    const hours = orNone(chosen.hours, (typed) => number(typed, t("readings-hours")));
    const warm = orNone(chosen.outside, (typed) => number(typed, t("readings-outside")));
    const outside: Quantity | null = warm === null ? null : { value: warm, unit: chosen.outsideUnit };
    await call("log-take", { machine, name, text, mapping, hours, on: chosen.on || null, outside, pin });
    onDone();
    turnTo("machine", machine, "trends");
  };
  return (
    <Page screen="readings-told" title={t("readings-told")} over={name} back={back}>
      {preview && <Figures preview={preview} />}
      <SignedForm deed={t("readings-sign")} onSign={sign}>
        <div class="beside numbers">
          <Field
            words={t("readings-hours")}
            value={chosen.hours}
            onValue={(hours) => change({ hours })}
            test="readings-hours"
            input={{ inputMode: "decimal" }}
          />
          <Field words={t("readings-on")} value={chosen.on} onValue={(on) => change({ on })} test="readings-on" input={{ type: "date" }} />
        </div>
        <div class="beside numbers">
          <Field
            words={t("readings-outside")}
            value={chosen.outside}
            onValue={(outside) => change({ outside })}
            test="readings-outside"
            input={{ inputMode: "decimal" }}
          />
          <label class="field">
            {t("measure-unit")}
            <select value={chosen.outsideUnit} onChange={(event) => change({ outsideUnit: event.currentTarget.value as Unit })} data-test="readings-outside-unit">
              {view.temperatures.map(({ code, sign: words }) => <option key={code} value={code}>{words}</option>)}
            </select>
          </label>
        </div>
        <p class="soft">{t("readings-outside-why")}</p>
      </SignedForm>
      <button type="button" class="as-link" onClick={() => change({ preview: null })} data-test="mapping-back">{t("readings-change")}</button>
      <button type="button" class="as-link" onClick={onAnew} data-test="readings-other">{t("readings-other")}</button>
    </Page>
  );
}

function Figures({ preview: { rows, unread, first_unread, lasts, readings, notes } }: { preview: LogPreview }) {
  return (
    <>
      <p data-test="readings-rows" data-unread={unread}>{t("readings-rows", { rows, lasts })}</p>
      {unread > 0 && (
        <p class="painted" data-test="readings-unread">
          <span class="strong">{t("readings-unread", { count: unread })}</span> {first_unread}
        </p>
      )}
      <ul class="rows">
        {readings.map(({ measure, words, value, left_out }) => (
          <li key={measure} class="figure" data-test={`figure-${measure}`}>
            <span class="line">
              <span class="strong">{words}</span> <span class="big-value num">{value}</span>
            </span>
            {left_out && <span class="block">{left_out}</span>}
          </li>
        ))}
      </ul>
      {notes.map((note) => <p key={note}>{note}</p>)}
    </>
  );
}

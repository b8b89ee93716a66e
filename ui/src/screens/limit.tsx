// One limit: where it is written, and signing it as the maker's manual has it.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useLoad } from "../hooks";
import { Field, numberOf } from "../parts/field";
import { Page, Waiting } from "../parts/page";
import { to, turnTo } from "../route";
import type { LimitView, Quantity, Unit } from "../types";
import { typedOf } from "../typed";
import { ownOf } from "../units";
import { t } from "../words";
import { SignedForm } from "./signed-form";

export function LimitScreen({ machine, band }: { machine: string; band: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="limit" fault={fault} again={again} back={back} />;
  const limit = value.limits.find((one) => one.band === band);
  return (
    <Page screen="limit" title={limit?.words ?? t("limit-unknown")} over={value.card.engine} back={back}>
      {limit ? <Limit machine={machine} limit={limit} /> : <p>{t("limit-unknown-hint")}</p>}
    </Page>
  );
}

interface Draft {
  low: string;
  high: string;
  unit: Unit | undefined;
  document: string;
  page: string;
}

function Limit({ machine, limit }: { machine: string; limit: LimitView }) {
  const [draft, setDraft, done] = useDraft<Draft>(`limit/${machine}/${limit.band}`, {
    low: typedOf(limit.low),
    high: typedOf(limit.high),
    unit: limit.low?.unit ?? limit.high?.unit ?? ownOf(limit.units),
    document: "",
    page: "",
  });
  const alone = limit.units.length === 1 ? (limit.units[0]?.sign ?? "") : "";
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });

  const end = (wanted: boolean, typed: string): Quantity | null => {
    if (!wanted) return null;
    const value = numberOf(typed);
    if (value === null || !draft.unit)
      throw { kind: "no-number", message: t("limit-no-number", { typed }), hint: t("limit-no-number-hint") };
    return { value, unit: draft.unit };
  };

  return (
    <>
      <div class="big-value num">{limit.value}</div>
      {limit.critical && <p class="strong">{t("limit-critical")}</p>}
      <p class={limit.confirmed ? "soft" : "unconfirmed"} data-test="source">{limit.source}</p>
      <h2>{t(limit.confirmed ? "limit-anew" : "limit-confirm")}</h2>
      <p class="soft">{t("limit-confirm-how")}</p>
      <SignedForm
        deed={t("limit-sign")}
        onSign={async (pin) => {
          const low = end(limit.has_low, draft.low);
          const high = end(limit.has_high, draft.high);
          await call("confirm-limit", { machine, band: limit.band, low, high, document: draft.document, page: draft.page, pin });
          done();
          turnTo("machine", machine);
        }}
      >
        <div class="beside">
          {limit.has_low && (
            <Field words={t("limit-low", { unit: alone })} value={draft.low} onValue={(low) => put({ low })} test="low" input={{ inputMode: "decimal" }} />
          )}
          {limit.has_high && (
            <Field words={t("limit-high", { unit: alone })} value={draft.high} onValue={(high) => put({ high })} test="high" input={{ inputMode: "decimal" }} />
          )}
          <UnitChoice limit={limit} unit={draft.unit} onUnit={(unit) => put({ unit })} />
        </div>
        <Field words={t("limit-document")} hint={t("limit-document-hint")} value={draft.document} onValue={(document) => put({ document })} test="document" />
        <Field words={t("limit-page")} value={draft.page} onValue={(page) => put({ page })} test="page" />
      </SignedForm>
    </>
  );
}

function UnitChoice({ limit, unit, onUnit }: { limit: LimitView; unit: Unit | undefined; onUnit: (unit: Unit) => void }) {
  if (limit.units.length < 2) return null;
  return (
    <label class="field">
      {t("measure-unit")}
      <select value={unit} onChange={(event) => onUnit(event.currentTarget.value as Unit)} data-test="unit">
        {limit.units.map(({ code, sign }) => (
          <option key={code} value={code}>
            {sign}
          </option>
        ))}
      </select>
    </label>
  );
}

// A torque tool, described: what its scale shows, how true it is, and since when.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Field } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { number, typedOf, whole } from "../../typed";
import type { ToolKept, ToolView, Unit } from "../../types";
import { ownOf, unitsOf } from "../../units";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

const NEW = "00000000-0000-0000-0000-000000000000";

interface Draft {
  name: string;
  low: string;
  high: string;
  unit: Unit;
  deviation: string;
  calibratedOn: string;
  everyDays: string;
  everyCycles: string;
  cycles: string;
  dropped: boolean;
}

const blank = (): Draft => ({ name: "", low: "", high: "", unit: ownOf(unitsOf("torque")) ?? "N.m", deviation: "4", calibratedOn: "", everyDays: "365", everyCycles: "5000", cycles: "0", dropped: false });

function draftOf({ kept, cycles }: ToolView): Draft {
  return {
    name: kept.name,
    low: typedOf(kept.low),
    high: typedOf(kept.high),
    unit: kept.low.unit,
    deviation: typedOf(kept.deviation_percent),
    calibratedOn: kept.calibrated_on ?? "",
    everyDays: String(kept.every_days),
    everyCycles: String(kept.every_cycles),
    // The clicks of signed inspections are counted from the latest description on.
    cycles: String(cycles),
    dropped: kept.dropped,
  };
}

const keptOf = (tool: string, draft: Draft): ToolKept => ({
  tool,
  name: draft.name,
  low: { value: number(draft.low, t("tool-low")), unit: draft.unit },
  high: { value: number(draft.high, t("tool-high")), unit: draft.unit },
  deviation_percent: number(draft.deviation, t("tool-deviation")),
  calibrated_on: draft.calibratedOn || null,
  every_days: whole(draft.everyDays, t("tool-every-days")),
  every_cycles: whole(draft.everyCycles, t("tool-every-cycles")),
  cycles: whole(draft.cycles, t("tool-clicks")),
  dropped: draft.dropped,
});

/** `then` is the point that waits for a tool. */
export function ToolForm({ id, then }: { id: string; then: string[] }) {
  const { value, fault, again } = useLoad("tools", {});
  const back = { href: to("tools"), words: t("tool-list") };
  if (!value) return <Waiting screen="tool-form" fault={fault} again={again} back={back} />;
  const known = value.find((tool) => tool.kept.tool === id);
  return <Form key={id} tool={known?.kept.tool ?? NEW} first={known ? draftOf(known) : blank()} known={known} then={then} />;
}

function Form({ tool, first, known, then }: { tool: string; first: Draft; known: ToolView | undefined; then: string[] }) {
  const [draft, setDraft, done] = useDraft(`tool/${tool}`, first);
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const [machine, occasion, point] = then;
  const place = machine && occasion && point ? ["walk", machine, occasion, "point", point] : ["tools"];
  const decimal = { inputMode: "decimal" } as const;
  const numeric = { inputMode: "numeric" } as const;
  return (
    <Page
      screen="tool-form"
      title={known ? known.kept.name : t("tool-new")}
      back={{ href: to(...place), words: t(machine ? "tool-back-to-point" : "tool-list") }}
    >
      {known && <p class="soft">{known.words}</p>}
      <SignedForm
        deed={t("tool-sign")}
        onSign={async (pin) => {
          await call("tool-save", { kept: keptOf(tool, draft), pin });
          done();
          turnTo(...place);
        }}
      >
        <Field words={t("tool-name")} hint={t("tool-name-hint")} value={draft.name} onValue={(name) => put({ name })} test="tool-name" />
        <div class="beside numbers">
          <Field words={t("tool-low")} value={draft.low} onValue={(low) => put({ low })} test="tool-low" input={decimal} />
          <Field words={t("tool-high")} value={draft.high} onValue={(high) => put({ high })} test="tool-high" input={decimal} />
          <label class="field">
            {t("tool-unit")}
            <select value={draft.unit} onChange={(event) => put({ unit: event.currentTarget.value as Unit })} data-test="tool-unit">
              {unitsOf("torque").map(({ code, sign }) => (
                <option key={code} value={code}>
                  {sign}
                </option>
              ))}
            </select>
          </label>
        </div>
        <Field words={t("tool-deviation")} hint={t("tool-deviation-hint")} value={draft.deviation} onValue={(deviation) => put({ deviation })} test="tool-deviation" input={decimal} />
        <Field words={t("tool-calibrated")} hint={t("tool-calibrated-hint")} value={draft.calibratedOn} onValue={(calibratedOn) => put({ calibratedOn })} test="tool-calibrated" input={{ type: "date" }} />
        <div class="beside numbers">
          <Field words={t("tool-every-days")} value={draft.everyDays} onValue={(everyDays) => put({ everyDays })} test="tool-every-days" input={numeric} />
          <Field words={t("tool-every-cycles")} value={draft.everyCycles} onValue={(everyCycles) => put({ everyCycles })} test="tool-every-cycles" input={numeric} />
        </div>
        <Field words={t("tool-clicks")} value={draft.cycles} onValue={(cycles) => put({ cycles })} test="tool-clicks" input={numeric} />
        <label class="choice">
          <input type="checkbox" checked={draft.dropped} onChange={(event) => put({ dropped: event.currentTarget.checked })} data-test="tool-dropped" />
          <span class="grow">{t("tool-dropped")}</span>
        </label>
      </SignedForm>
    </Page>
  );
}

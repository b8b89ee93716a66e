// Preparing that a defect may wait. Signed it is on the instructor's device, or not at all.
import { useDraft } from "../../src/drafts";
import { useAct } from "../../src/hooks";
import { Caution } from "../../src/parts/cautions";
import { FaultNote } from "../../src/parts/fault";
import { Field, TextArea } from "../../src/parts/field";
import { to } from "../../src/route";
import { number, orNone, whole } from "../../src/typed";
import type { MachinePage } from "../../src/types";
import { t } from "../../src/words";
import { post, useGet } from "../ask";
import { lookAtDrafts } from "../live";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";
import { SignThere, type Prepared } from "./sign-there";

const BLANK = { hours: "", flights: "", date: "", condition: "", reason: "" };

export function DeferSheet({ machine, point }: { machine: string; point: string }) {
  const { value, fault: unread, again: reread } = useGet<MachinePage>(`machine/${encodeURIComponent(machine)}`);
  const [draft, setDraft, done] = useDraft(`defer/${machine}/${point}`, BLANK);
  const [prepared, setPrepared] = useDraft<Prepared | null>(`prepared/${machine}/${point}`, null);
  const { busy, fault, act, again } = useAct();
  if (!value) return <Loading fault={unread} again={reread} />;
  const put = (change: Partial<typeof BLANK>) => setDraft({ ...draft, ...change });
  const matter = value.open.find((open) => open.point === point);
  const prepare = () =>
    act(async () => {
      const made = await post<Prepared>("prepare/deferral", {
        machine,
        point,
        until_hours: orNone(draft.hours, (typed) => number(typed, t("wall-hours"))),
        until_flights: orNone(draft.flights, (typed) => whole(typed, t("wall-flights"))),
        until_date: draft.date || null,
        condition: draft.condition,
        reason: draft.reason,
      });
      await lookAtDrafts();
      setPrepared(made);
      done();
    });
  return (
    <>
      <SheetTitle over={`${value.card.name} · ${t("wall-defer")}`}>{matter?.title ?? t("wall-defer")}</SheetTitle>
      {matter && <p><span class="strong">{matter.words}</span> <span class="block soft">{matter.since}</span></p>}
      <Caution words={t("wall-defer-caution")} />
      {prepared ? (
        <SignThere prepared={prepared} />
      ) : (
        <form onSubmit={(event) => (event.preventDefault(), void prepare())}>
          <fieldset>
            <legend>{t("wall-until")}</legend>
            <p class="soft">{t("wall-now", { hours: value.card.hours, flights: value.card.flights })}</p>
            <div class="beside numbers">
              <Field words={t("wall-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="defer-hours" input={{ inputMode: "decimal" }} />
              <Field words={t("wall-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="defer-flights" input={{ inputMode: "numeric" }} />
              <Field words={t("wall-date")} value={draft.date} onValue={(date) => put({ date })} test="defer-date" input={{ type: "date" }} />
            </div>
          </fieldset>
          <TextArea words={t("wall-condition")} hint={t("wall-condition-hint")} value={draft.condition} onValue={(condition) => put({ condition })} test="defer-condition" rows={2} />
          <TextArea words={t("wall-reason")} value={draft.reason} onValue={(reason) => put({ reason })} test="defer-reason" rows={2} />
          <FaultNote fault={fault} again={again} />
          <button type="submit" class="go" aria-disabled={busy} data-test="prepare">{t("wall-prepare")}</button>
          <p class="soft">{t("wall-prepare-what")}</p>
        </form>
      )}
      <p class="links"><a href={to("machine", machine)} data-test="to-machine">{t("wall-to-machine")}</a></p>
    </>
  );
}

// Signing that a defect may wait, until when, and under which condition.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Field, TextArea } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { number, orNone, whole } from "../../typed";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

const BLANK = { hours: "", flights: "", date: "", condition: "", reason: "" };

export function Defer({ machine, point }: { machine: string; point: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  const [draft, setDraft, done] = useDraft(`defer/${machine}/${point}`, BLANK);
  const put = (change: Partial<typeof BLANK>) => setDraft({ ...draft, ...change });
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="defer" fault={fault} again={again} back={back} />;
  const matter = value.open.find((open) => open.point === point);
  return (
    <Page screen="defer" title={matter?.title ?? t("defer")} over={t("defer")} back={back}>
      {matter ? <p><span class="strong">{matter.words}</span> <span class="soft">{matter.since}</span></p> : <p>{t("put-right-nothing")}</p>}
      {matter && (
        <SignedForm
          deed={t("defer-sign")}
          onSign={async (pin) => {
            await call("defer", {
              machine,
              point,
              until_hours: orNone(draft.hours, (typed) => number(typed, t("form-hours"))),
              until_flights: orNone(draft.flights, (typed) => whole(typed, t("form-flights"))),
              until_date: draft.date || null,
              condition: draft.condition,
              reason: draft.reason,
              pin,
            });
            done();
            turnTo("machine", machine);
          }}
        >
          <fieldset>
            <legend>{t("defer-until")}</legend>
            <p class="soft">{t("defer-now", { hours: value.card.hours, flights: value.card.flights })}</p>
            <div class="beside numbers">
              <Field words={t("defer-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="defer-hours" input={{ inputMode: "decimal" }} />
              <Field words={t("defer-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="defer-flights" input={{ inputMode: "numeric" }} />
              <Field words={t("defer-date")} value={draft.date} onValue={(date) => put({ date })} test="defer-date" input={{ type: "date" }} />
            </div>
          </fieldset>
          <TextArea words={t("defer-condition")} hint={t("defer-condition-hint")} value={draft.condition} onValue={(condition) => put({ condition })} test="defer-condition" rows={2} />
          <TextArea words={t("defer-reason")} value={draft.reason} onValue={(reason) => put({ reason })} test="defer-reason" rows={2} />
          <p class="soft">{t("defer-means")}</p>
        </SignedForm>
      )}
    </Page>
  );
}

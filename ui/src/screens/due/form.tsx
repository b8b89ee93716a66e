// Something that falls due again and again: kept, changed, done, or ended.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Field } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import type { DueForm, MachinePage } from "../../types";
import { number, orNone, today, typedOf, whole } from "../../typed";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

interface Draft {
  title: string;
  hours: string;
  flights: string;
  tanks: string;
  days: string;
  tolerance: string;
  fromDue: boolean;
  doneHours: string;
  doneFlights: string;
  doneOn: string;
  ended: boolean;
}

function draftOf(kept: DueForm | null, page: MachinePage): Draft {
  return {
    title: kept?.title ?? "",
    hours: typedOf(kept?.every.hours),
    flights: typedOf(kept?.every.flights),
    tanks: typedOf(kept?.every.tanks),
    days: typedOf(kept?.every.days),
    tolerance: typedOf(kept?.tolerance_percent ?? 0),
    fromDue: kept?.from_due ?? false,
    doneHours: typedOf(kept?.done_hours ?? page.card.hours),
    doneFlights: typedOf(kept?.done_flights ?? page.card.flights),
    doneOn: kept?.done_on ?? today(),
    ended: false,
  };
}

const formOf = (id: string, draft: Draft): DueForm => ({
  id,
  title: draft.title,
  every: {
    hours: orNone(draft.hours, (typed) => number(typed, t("form-hours"))),
    flights: orNone(draft.flights, (typed) => whole(typed, t("form-flights"))),
    tanks: orNone(draft.tanks, (typed) => whole(typed, t("log-tanks"))),
    days: orNone(draft.days, (typed) => whole(typed, t("due-days"))),
  },
  tolerance_percent: number(draft.tolerance || "0", t("due-tolerance")),
  from_due: draft.fromDue,
  done_hours: number(draft.doneHours || "0", t("form-hours")),
  done_flights: whole(draft.doneFlights || "0", t("form-flights")),
  done_on: draft.doneOn,
});

export function DueScreen({ machine, item }: { machine: string; item: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="due" fault={fault} again={again} back={back} />;
  const kept = value.due.find((due) => due.id === item)?.kept ?? null;
  const left = value.due.find((due) => due.id === item)?.left;
  return (
    <Page screen="due" title={kept?.title ?? t("due-new")} over={value.card.name} back={back}>
      {left && <p class="strong">{left}</p>}
      <Form machine={machine} page={value} kept={kept} />
    </Page>
  );
}

function Form({ machine, page, kept }: { machine: string; page: MachinePage; kept: DueForm | null }) {
  const [draft, setDraft, done] = useDraft(`due/${machine}/${kept?.id ?? ""}`, draftOf(kept, page));
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const decimal = { inputMode: "decimal" } as const;
  const numeric = { inputMode: "numeric" } as const;
  const doneNow = () => put({ doneHours: typedOf(page.card.hours), doneFlights: typedOf(page.card.flights), doneOn: today() });
  return (
    <SignedForm
      deed={t(draft.ended ? "due-end" : "due-sign")}
      onSign={async (pin) => {
        await call("due-save", { machine, form: formOf(kept?.id ?? "", draft), ended: draft.ended, pin });
        done();
        turnTo("machine", machine);
      }}
    >
      <Field words={t("due-title")} value={draft.title} onValue={(title) => put({ title })} test="due-title" />
      <fieldset>
        <legend>{t("due-every")}</legend>
        <div class="beside numbers">
          <Field words={t("form-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="due-hours" input={decimal} />
          <Field words={t("form-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="due-flights" input={numeric} />
          <Field words={t("log-tanks")} value={draft.tanks} onValue={(tanks) => put({ tanks })} test="due-tanks" input={numeric} />
          <Field words={t("due-days")} value={draft.days} onValue={(days) => put({ days })} test="due-days" input={numeric} />
        </div>
      </fieldset>
      <fieldset>
        <legend>{t("due-done")}</legend>
        {kept && <button type="button" onClick={doneNow} data-test="due-done-now">{t("due-done-now")}</button>}
        <div class="beside numbers">
          <Field words={t("due-done-on")} value={draft.doneOn} onValue={(doneOn) => put({ doneOn })} test="due-done-on" input={{ type: "date" }} />
          <Field words={t("form-hours")} value={draft.doneHours} onValue={(doneHours) => put({ doneHours })} test="due-done-hours" input={decimal} />
          <Field words={t("form-flights")} value={draft.doneFlights} onValue={(doneFlights) => put({ doneFlights })} test="due-done-flights" input={numeric} />
        </div>
      </fieldset>
      <Field words={t("due-tolerance")} hint={t("due-tolerance-hint")} value={draft.tolerance} onValue={(tolerance) => put({ tolerance })} test="due-tolerance" input={decimal} />
      <label class="choice">
        <input type="checkbox" checked={draft.fromDue} onChange={(event) => put({ fromDue: event.currentTarget.checked })} data-test="due-from-due" />
        <span class="grow">{t("due-from-due")}</span>
      </label>
      {kept && (
        <label class="choice">
          <input type="checkbox" checked={draft.ended} onChange={(event) => put({ ended: event.currentTarget.checked })} data-test="due-ended" />
          <span class="grow">{t("due-ended")}</span>
        </label>
      )}
    </SignedForm>
  );
}

// Time in service typed, or as the hour meter shows it.
import { useDraft } from "../../drafts";
import { Field } from "../../parts/field";
import { FaultNote } from "../../parts/fault";
import { asFault, type Fault } from "../../calls";
import { useState } from "preact/hooks";
import { number, whole } from "../../typed";
import { t } from "../../words";
import type { Log } from "./log";

const BLANK = { meter: "", hours: "", flights: "1", tanks: "0", note: "" };

export function OtherWays({ machine, busy, onBegin, onLog }: { machine: string; busy: boolean; onBegin: () => void; onLog: Log }) {
  const [draft, setDraft, done] = useDraft(`log/${machine}/typed`, BLANK);
  const [fault, setFault] = useState<Fault | null>(null);
  const put = (change: Partial<typeof BLANK>) => setDraft({ ...draft, ...change });
  const log = async () => {
    setFault(null);
    onBegin();
    try {
      const byMeter = draft.meter.trim() !== "";
      const added = {
        // What the meter shows says how long it ran.
        hours: byMeter ? 0 : number(draft.hours || "0", t("log-hours")),
        flights: whole(draft.flights || "0", t("form-flights")),
        tanks: whole(draft.tanks || "0", t("log-tanks")),
      };
      const reading = byMeter ? number(draft.meter, t("log-meter")) : null;
      const words = byMeter
        ? t("log-read", { hours: reading ?? 0, flights: added.flights })
        : t("log-typed", { hours: added.hours, flights: added.flights });
      if (await onLog({ added, reading, note: draft.note, words })) done();
    } catch (thrown) {
      setFault(asFault(thrown));
    }
  };
  const decimal = { inputMode: "decimal" } as const;
  const numeric = { inputMode: "numeric" } as const;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void log();
      }}
    >
      <Field words={t("log-meter")} hint={t("log-meter-hint")} value={draft.meter} onValue={(meter) => put({ meter })} test="log-meter" input={decimal} />
      <div class="beside numbers">
        <Field words={t("log-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="log-hours" input={decimal} />
        <Field words={t("form-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="log-flights" input={numeric} />
        <Field words={t("log-tanks")} value={draft.tanks} onValue={(tanks) => put({ tanks })} test="log-tanks" input={numeric} />
      </div>
      <Field words={t("form-note")} value={draft.note} onValue={(note) => put({ note })} test="log-note" />
      <FaultNote fault={fault} />
      <button type="submit" class="go" aria-disabled={busy} data-test="log-typed">{t("log-it")}</button>
    </form>
  );
}

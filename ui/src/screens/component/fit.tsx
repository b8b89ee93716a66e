// Fitting a component that is new here, with the time that it brings.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Field } from "../../parts/field";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { number, whole } from "../../typed";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

const BLANK = { part: "", name: "", serial: "", hours: "0", flights: "0", tanks: "0" };

export function ComponentNew({ machine }: { machine: string }) {
  const page = useLoad("machine", { id: machine });
  const choices = useLoad("choices", {});
  const [draft, setDraft, done] = useDraft(`component/${machine}`, BLANK);
  const put = (change: Partial<typeof BLANK>) => setDraft({ ...draft, ...change });
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!page.value || !choices.value)
    return <Waiting screen="component-new" fault={page.fault ?? choices.fault} again={() => (page.again(), choices.again())} back={back} />;
  const engine = page.value.description.engine;
  const parts = choices.value.engines.find((one) => one.id === engine)?.parts ?? [];
  const numeric = { inputMode: "numeric" } as const;
  return (
    <Page screen="component-new" title={t("component-new")} over={page.value.card.name} back={back}>
      <SignedForm
        deed={t("component-fit-sign")}
        onSign={async (pin) => {
          const own = {
            hours: number(draft.hours || "0", t("form-hours")),
            flights: whole(draft.flights || "0", t("form-flights")),
            tanks: whole(draft.tanks || "0", t("log-tanks")),
          };
          await call("component-fit", { machine, part: draft.part || (parts[0]?.id ?? ""), name: draft.name, serial: draft.serial, own, pin });
          done();
          turnTo("machine", machine);
        }}
      >
        <label class="field">
          {t("component-part")}
          <select value={draft.part || parts[0]?.id} onChange={(event) => put({ part: event.currentTarget.value })} data-test="component-part">
            {parts.map((part) => (
              <option key={part.id} value={part.id}>
                {part.words}
              </option>
            ))}
          </select>
        </label>
        <Field words={t("component-name")} value={draft.name} onValue={(name) => put({ name })} test="component-name" />
        <Field words={t("component-serial")} value={draft.serial} onValue={(serial) => put({ serial })} test="component-serial" />
        <fieldset>
          <legend>{t("component-brings")}</legend>
          <div class="beside numbers">
            <Field words={t("form-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="component-hours" input={{ inputMode: "decimal" }} />
            <Field words={t("form-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="component-flights" input={numeric} />
            <Field words={t("log-tanks")} value={draft.tanks} onValue={(tanks) => put({ tanks })} test="component-tanks" input={numeric} />
          </div>
        </fieldset>
      </SignedForm>
    </Page>
  );
}

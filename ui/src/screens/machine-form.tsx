// Describing a machine: registered once, described anew whenever it changes; signed each time.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useLoad } from "../hooks";
import { Field, numberOf, TextArea } from "../parts/field";
import { Page, Waiting } from "../parts/page";
import { to, turnTo } from "../route";
import type { Choices, EngineType, Machine } from "../types";
import { typedOf } from "../typed";
import { t } from "../words";
import { describedLoad, type LoadDraft, LoadFields, loadOf } from "./machine-load";
import { EngineChoice, Parts } from "./machine-parts";
import { SignedForm } from "./signed-form";

/** What is typed, before it is a machine. */
export interface Draft {
  name: string;
  engine: string;
  fitted: Record<string, string>;
  repackedOn: string;
  everyDays: string;
  hours: string;
  flights: string;
  note: string;
  invented: boolean;
  load: LoadDraft;
}

const blank = (): Draft => ({ name: "", engine: "", fitted: {}, repackedOn: "", everyDays: "", hours: "", flights: "", note: "", invented: false, load: loadOf(null) });

function draftOf(machine: Machine): Draft {
  return {
    name: machine.name,
    engine: machine.engine,
    fitted: machine.fitted,
    repackedOn: machine.reserve?.repacked_on ?? "",
    everyDays: typedOf(machine.reserve?.every_days),
    hours: typedOf(machine.hours),
    flights: typedOf(machine.flights),
    note: machine.note ?? "",
    invented: machine.invented ?? false,
    load: loadOf(machine),
  };
}

/** Nothing typed counts as nought; a text that is no number is told apart from one that the core refuses. */
function number(typed: string, words: string): number {
  const value = typed.trim() === "" ? 0 : numberOf(typed);
  if (value === null) throw { kind: "no-number", message: t("form-no-number", { words, typed }), hint: t("form-no-number-hint") };
  return value;
}

function machineOf(draft: Draft, engine: EngineType | undefined): Machine {
  // What was ticked for another engine's type stays typed, and is not signed.
  const fitted = Object.fromEntries(
    Object.entries(draft.fitted).filter(([part]) => engine?.parts.some((one) => one.id === part)),
  );
  return {
    name: draft.name,
    engine: draft.engine,
    fitted,
    ...("reserve" in fitted ? { reserve: { repacked_on: draft.repackedOn || null, every_days: number(draft.everyDays, t("form-every-days")) } } : {}),
    hours: number(draft.hours, t("form-hours")),
    flights: number(draft.flights, t("form-flights")),
    note: draft.note,
    invented: draft.invented,
    ...describedLoad(draft.load),
  };
}

/** A machine that isn't registered yet. */
export function NewMachine() {
  const choices = useLoad("choices", {});
  if (!choices.value) return <Waiting screen="machine-form" fault={choices.fault} again={choices.again} />;
  return <Form id="" first={blank()} choices={choices.value} title={t("form-new")} />;
}

/** A registered machine, described anew. */
export function EditMachine({ id }: { id: string }) {
  const choices = useLoad("choices", {});
  const page = useLoad("machine", { id });
  if (!choices.value || !page.value) {
    const again = () => (choices.again(), page.again());
    return <Waiting screen="machine-form" fault={choices.fault ?? page.fault} again={again} />;
  }
  return <Form id={id} first={draftOf(page.value.description)} choices={choices.value} title={t("form-edit", { machine: page.value.card.name })} />;
}

function Form({ id, first, choices, title }: { id: string; first: Draft; choices: Choices; title: string }) {
  const [draft, setDraft, done] = useDraft(`machine/${id}`, first);
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const engine = choices.engines.find((one) => one.id === draft.engine);
  const back = id ? { href: to("machine", id), words: first.name } : { href: "#/", words: t("to-machines") };
  return (
    <Page screen="machine-form" title={title} back={back}>
      <SignedForm
        deed={t("form-sign")}
        onSign={async (pin) => {
          const page = await call("machine-save", { id, description: machineOf(draft, engine), pin });
          done();
          turnTo("machine", page.card.id);
        }}
      >
        <Field words={t("form-name")} hint={t("form-name-hint")} value={draft.name} onValue={(name) => put({ name })} test="machine-name" />
        <EngineChoice engines={choices.engines} engine={draft.engine} onEngine={(engine) => put({ engine })} />
        {engine && <Parts parts={engine.parts} draft={draft} put={put} />}
        <LoadFields load={draft.load} onLoad={(load) => put({ load })} />
        <div class="beside">
          <Field words={t("form-hours")} value={draft.hours} onValue={(hours) => put({ hours })} test="hours" input={{ inputMode: "decimal" }} />
          <Field words={t("form-flights")} value={draft.flights} onValue={(flights) => put({ flights })} test="flights" input={{ inputMode: "numeric" }} />
        </div>
        <TextArea words={t("form-note")} value={draft.note} onValue={(note) => put({ note })} test="machine-note" rows={3} />
      </SignedForm>
    </Page>
  );
}

// Taking a component off, and fitting it to another machine; its time goes with it.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to, turnTo } from "../../route";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

export function ComponentScreen({ machine, component }: { machine: string; component: string }) {
  const page = useLoad("machine", { id: machine });
  const machines = useLoad("machines", {});
  const [where, setWhere, done] = useDraft(`move/${component}`, "");
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!page.value || !machines.value)
    return <Waiting screen="component" fault={page.fault ?? machines.fault} again={() => (page.again(), machines.again())} back={back} />;
  const one = page.value.components.find((known) => known.id === component);
  if (!one) return <Page screen="component" title={t("component-unknown")} back={back}><p>{t("component-unknown-hint")}</p></Page>;
  const others = machines.value.filter((card) => card.id !== machine);
  const choice = (id: string, words: string, test: string) => (
    <label key={id} class="choice">
      <input type="radio" name="where" checked={where === id} onChange={() => setWhere(id)} data-test={test} />
      <span class="grow">{words}</span>
    </label>
  );
  return (
    <Page screen="component" title={one.name} over={one.part_words} back={back}>
      <p>{one.words}{one.serial && ` · ${one.serial}`}</p>
      <p class="links"><a href={to("record", one.record)}>{t("component-record")}</a></p>
      <SignedForm
        deed={t("component-move-sign")}
        onSign={async (pin) => {
          await call("component-move", { machine, component, to: where || null, pin });
          done();
          turnTo("machine", machine);
        }}
      >
        <fieldset>
          <legend>{t("component-where")}</legend>
          {choice("", t("component-take-off"), "move-off")}
          {others.map((card) => choice(card.id, t("component-to", { machine: card.name }), `move-${card.id}`))}
        </fieldset>
        <p class="soft">{t("component-keeps")}</p>
      </SignedForm>
    </Page>
  );
}

// A second person's key on this device.
import { useState } from "preact/hooks";
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useAct } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Field, PinField } from "../../parts/field";
import type { SecondPerson } from "../../types";
import { t } from "../../words";

export function AddPerson({ onPeople }: { onPeople: (people: SecondPerson[]) => void }) {
  const [name, setName, done] = useDraft("second/name", "");
  const [pin, setPin] = useState("");
  const [twice, setTwice] = useState("");
  const { busy, fault, act } = useAct();
  const add = () =>
    act(async () => {
      if (pin !== twice) throw { kind: "pins-differ", message: t("pins-differ"), hint: t("pins-differ-hint") };
      const people = await call("second-person-add", { name, pin });
      done();
      setName("");
      setPin("");
      setTwice("");
      onPeople(people);
    });
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <Field words={t("second-name")} value={name} onValue={setName} test="second-name" />
      <PinField words={t("second-pin")} hint={t("second-pin-hint")} value={pin} onValue={setPin} test="second-pin" />
      <PinField words={t("pin-twice")} value={twice} onValue={setTwice} test="second-pin-twice" />
      <FaultNote fault={fault} />
      <button type="submit" aria-disabled={busy} data-test="second-add">
        {t(busy ? "first-busy" : "second-add")}
      </button>
    </form>
  );
}

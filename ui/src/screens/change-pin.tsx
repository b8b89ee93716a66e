// A new PIN for the key on this device.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { PinField } from "../parts/field";
import { opened } from "../state";
import { t } from "../words";

export function ChangePin() {
  const [old, setOld] = useState("");
  const [fresh, setFresh] = useState("");
  const [twice, setTwice] = useState("");
  const [changed, setChanged] = useState(false);
  const { busy, fault, act } = useAct();
  const change = () =>
    act(async () => {
      setChanged(false);
      if (fresh !== twice) throw { kind: "pins-differ", message: t("pins-differ"), hint: t("pins-differ-hint") };
      opened(await call("change-pin", { old, new: fresh }));
      for (const empty of [setOld, setFresh, setTwice]) empty("");
      setChanged(true);
    });
  return (
    <details>
      <summary data-test="change-pin">{t("settings-pin")}</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void change();
        }}
      >
        <PinField words={t("pin-old")} value={old} onValue={setOld} test="pin-old" />
        <PinField words={t("pin-choose")} hint={t("pin-hint")} value={fresh} onValue={setFresh} test="pin-new" />
        <PinField words={t("pin-twice")} value={twice} onValue={setTwice} test="pin-twice" />
        <FaultNote fault={fault} />
        <button type="submit" aria-disabled={busy} data-test="pin-change">{t("settings-pin-change")}</button>
      </form>
      <p role="status">{changed && t("settings-pin-changed")}</p>
    </details>
  );
}

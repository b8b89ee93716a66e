// The first start: who signs here, and with which PIN.
import { call } from "../calls";
import { useState } from "preact/hooks";
import { useAct } from "../hooks";
import { Cautions } from "../parts/cautions";
import { FaultNote } from "../parts/fault";
import { Field, PinField } from "../parts/field";
import { MachinePicture } from "../parts/plan";
import { Page } from "../parts/page";
import { to } from "../route";
import { choose, opened, start } from "../state";
import { keepLanguage, t } from "../words";
import { Language } from "./settings-choices";

export function First() {
  const [name, setName] = useState("");
  const [pin, setPin] = useState("");
  const [twice, setTwice] = useState("");
  const { busy, fault, act } = useAct();

  const begin = () =>
    act(async () => {
      if (pin !== twice) throw { kind: "pins-differ", message: t("pins-differ"), hint: t("pins-differ-hint") };
      opened(await call("begin", { name, pin }));
    });

  const speakIn = (language: string) =>
    void act(async () => {
      keepLanguage(language);
      if (start.value) opened(await choose(start.value, { language }));
    });

  return (
    <Page screen="first" title={t("first-title")} over={t("app-name")} pictureFirst picture={<MachinePicture />}>
      <p>{t("first-what")}</p>
      {start.value && <Language now={start.value} onLanguage={speakIn} />}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void begin();
        }}
      >
        <Field words={t("first-name")} value={name} onValue={setName} test="name" input={{ autocomplete: "name" }} />
        <PinField words={t("pin-choose")} hint={t("pin-hint")} value={pin} onValue={setPin} />
        <PinField words={t("pin-twice")} value={twice} onValue={setTwice} test="pin-twice" />
        <FaultNote fault={fault} />
        <button type="submit" class="go" aria-disabled={busy} data-test="begin">
          {t(busy ? "first-busy" : "first-begin")}
        </button>
      </form>
      <nav class="links" aria-label={t("machines-more")}>
        <a href={to("again")} data-test="first-as">{t("first-as")}</a>
      </nav>
      <Cautions />
    </Page>
  );
}

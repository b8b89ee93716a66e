// The first start of another device of somebody: who they are comes from the device they have.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { useDraft, useKept } from "../drafts";
import { useAct } from "../hooks";
import { kindOf } from "../kinds";
import { FaultNote } from "../parts/fault";
import { PinField } from "../parts/field";
import { Page } from "../parts/page";
import { Reader } from "../parts/reader";
import { turnTo } from "../route";
import { opened } from "../state";
import { t } from "../words";
import { NO_FIRST } from "./school/take-answer";

export function FirstAs() {
  const [text, setText, done] = useDraft("first/as", "");
  const [, keepFirst] = useKept("device/first", NO_FIRST);
  const [pin, setPin] = useState("");
  const [twice, setTwice] = useState("");
  const { busy, fault, act } = useAct();
  const begin = () =>
    act(async () => {
      if (pin !== twice) throw { kind: "pins-differ", message: t("pins-differ"), hint: t("pins-differ-hint") };
      const told = await call("begin-as", { text, pin });
      keepFirst({ text });
      done();
      turnTo("school", "device");
      opened(told);
    });
  return (
    <Page screen="first-as" title={t("first-as-title")} back={{ href: "#/", words: t("first-as-back") }}>
      <p>{t("first-as-what")}</p>
      {text === "" ? (
        <Reader
          name="first/as"
          deed={t("first-as-take")}
          onText={async (found) => {
            if (kindOf(found) !== "applicant") throw { kind: "code-other", message: t("first-as-other"), hint: t("first-as-other-hint") };
            setText(found);
          }}
        />
      ) : (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void begin();
          }}
        >
          <p class="banner">{t("first-as-taken")}</p>
          <PinField words={t("pin-choose")} hint={t("pin-hint")} value={pin} onValue={setPin} />
          <PinField words={t("pin-twice")} value={twice} onValue={setTwice} test="pin-twice" />
          <FaultNote fault={fault} />
          <button type="submit" class="go" aria-disabled={busy} data-test="begin">{t(busy ? "first-busy" : "first-begin")}</button>
          <button type="button" class="as-link" onClick={() => setText("")} data-test="first-as-anew">{t("first-as-anew")}</button>
        </form>
      )}
    </Page>
  );
}

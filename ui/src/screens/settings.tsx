// What this device keeps to itself, who signs on it, and what the program is.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useState } from "preact/hooks";
import { useAct } from "../hooks";
import { Cautions } from "../parts/cautions";
import { FaultNote } from "../parts/fault";
import { Field, numberOf } from "../parts/field";
import { FileGift } from "../parts/gift";
import { Page } from "../parts/page";
import { opened, start } from "../state";
import type { Start } from "../types";
import { languageName, t } from "../words";
import { ChangePin } from "./change-pin";

export function Settings() {
  const now = start.value;
  if (!now) return null;
  return (
    <Page screen="settings" title={t("machines-settings")} back={{ href: "#/", words: t("to-machines") }}>
      {now.person && (
        <section aria-labelledby="person">
          <h2 id="person">{t("settings-person", { name: now.person.name })}</h2>
          <p class="mono" data-test="thumbprint">{now.person.device}</p>
          <p class="soft">{t("settings-thumbprint")}</p>
          <p class="soft">{t(now.person.keychain ? "settings-keychain" : "settings-no-keychain")}</p>
        </section>
      )}
      <Choices now={now} />
      <ChangePin />
      <section aria-labelledby="everything">
        <h2 id="everything">{t("everything")}</h2>
        <p class="soft">{t("everything-what")}</p>
        <FileGift words={t("everything-give")} test="export-all" make={() => call("export-all", {})} />
      </section>
      <section aria-labelledby="about">
        <h2 id="about">{t("settings-about")}</h2>
        <p>{t("settings-about-what")}</p>
        <Cautions />
      </section>
    </Page>
  );
}

function Choices({ now }: { now: Start }) {
  const [language, setLanguage] = useState(now.language);
  const [patience, setPatience, done] = useDraft("settings/patience", String(now.patience_minutes));
  const [kept, setKept] = useState(false);
  const { busy, fault, act } = useAct();
  const keep = () =>
    act(async () => {
      setKept(false);
      const minutes = numberOf(patience);
      if (minutes === null || !Number.isInteger(minutes) || minutes < 0)
        throw { kind: "no-number", message: t("settings-no-minutes", { typed: patience }), hint: t("settings-no-minutes-hint") };
      opened(await call("settings", { language, patience_minutes: minutes, read_aloud: now.read_aloud, units: now.units }));
      done();
      setKept(true);
    });
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label class="field">
        {t("settings-language")}
        <select value={language} onChange={(event) => setLanguage(event.currentTarget.value)} data-test="language">
          {now.languages.map((code) => (
            <option key={code} value={code}>
              {languageName(code)}
            </option>
          ))}
        </select>
      </label>
      <Field
        words={t("settings-patience")}
        hint={t("settings-patience-hint")}
        value={patience}
        onValue={setPatience}
        test="patience"
        input={{ inputMode: "numeric" }}
      />
      <FaultNote fault={fault} />
      <button type="submit" aria-disabled={busy} data-test="settings-keep">{t("settings-keep")}</button>
      <p role="status" data-test="settings-kept">{kept && t("settings-kept")}</p>
    </form>
  );
}

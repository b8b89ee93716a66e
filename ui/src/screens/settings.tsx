// What this device keeps to itself, who signs on it, and what the program is.
import { call } from "../calls";
import { Cautions } from "../parts/cautions";
import { FileGift } from "../parts/gift";
import { Page } from "../parts/page";
import { start } from "../state";
import { t } from "../words";
import { ChangePin } from "./change-pin";
import { Choices } from "./settings-choices";

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

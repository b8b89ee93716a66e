// Leaving the school.
import { call } from "../../calls";
import { Page } from "../../parts/page";
import { to, turnTo } from "../../route";
import { heard, useSchool } from "../../school";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

export function Leave() {
  const { value } = useSchool();
  const name = value?.school?.name ?? t("school");
  return (
    <Page screen="school-leave" title={t("leave-title", { school: name })} back={{ href: to("school"), words: name }}>
      <SignedForm
        deed={t("leave-sign")}
        onSign={async (pin) => {
          heard(await call("school-leave", { pin }));
          turnTo("school");
        }}
      >
        <p>{t("leave-what")}</p>
      </SignedForm>
    </Page>
  );
}

// Founding a school: this device becomes its root.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { Field } from "../../parts/field";
import { Page } from "../../parts/page";
import { to, turnTo } from "../../route";
import { heard } from "../../school";
import { t } from "../../words";
import { SignedForm } from "../signed-form";

export function Found() {
  const [name, setName, done] = useDraft("school/name", "");
  return (
    <Page screen="school-found" title={t("found-title")} back={{ href: to("school"), words: t("school") }}>
      <p>{t("found-what")}</p>
      <SignedForm
        deed={t("found-sign")}
        onSign={async (pin) => {
          heard(await call("school-found", { name, pin }));
          done();
          turnTo("school");
        }}
      >
        <Field words={t("found-name")} value={name} onValue={setName} test="school-name" />
        <p class="soft">{t("found-root")}</p>
      </SignedForm>
    </Page>
  );
}

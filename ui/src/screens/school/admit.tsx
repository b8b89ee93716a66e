// The root admits: who asks, as what, until when; and the code that lets them in.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { Code } from "../../parts/code";
import { Page } from "../../parts/page";
import { Reader } from "../../parts/reader";
import { to } from "../../route";
import { lookAtSchool, useSchool } from "../../school";
import type { ApplicantView, CodeOut } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { NO_TERM, RoleFields, type Term } from "./role-fields";
import { Spoken } from "./spoken";
import { WaitingList } from "./waiting-list";

export function Admit() {
  const own = useSchool();
  const [who, setWho] = useDraft<ApplicantView | null>("admit/who", null);
  const [term, setTerm] = useDraft<Term>("admit/term", NO_TERM);
  const [answer, setAnswer] = useDraft<CodeOut | null>("admit/answer", null);
  const back = { href: to("school"), words: own.value?.school?.name ?? t("school") };
  const anew = () => {
    setWho(null);
    setTerm(NO_TERM);
    setAnswer(null);
  };

  if (!who)
    return (
      <Page screen="admit" title={t("admit")} back={back}>
        <p>{t("admit-what")}</p>
        {own.value?.school?.address && <WaitingList onChosen={setWho} />}
        <section aria-labelledby="by-code">
          <h2 id="by-code">{t("admit-by-code")}</h2>
          <Reader
            name="admit"
            deed={t("admit-take")}
            onText={async (text) => setWho(await call("school-applicant", { text }))}
          />
        </section>
      </Page>
    );

  const again = <button type="button" class="as-link" onClick={anew} data-test="admit-anew">{t("admit-anew")}</button>;
  if (answer)
    return (
      <Page screen="admitted" title={t("admitted", { name: who.name })} back={back} picture={<Code code={answer} words={t("admitted-code")} />}>
        <p>{t("admitted-what", { name: who.name, server: own.value?.school?.address ? "yes" : "no" })}</p>
        {again}
      </Page>
    );
  return (
    <Page screen="admit-as" title={who.name} over={t("admit")} back={back}>
      {who.member && <p class="banner">{t("admit-member")}</p>}
      <Spoken code={who.code} words={t("admit-compare")} test="applicant-code" />
      <p class="soft">{t("admit-compare-how", { name: who.name })}</p>
      <SignedForm
        deed={t("admit-sign", { name: who.name })}
        onSign={async (pin) => {
          setAnswer(await call("school-admit", { text: who.text, role: term.role, until: term.until || null, pin }));
          await lookAtSchool();
        }}
      >
        <RoleFields term={term} onTerm={setTerm} />
      </SignedForm>
      {again}
    </Page>
  );
}

// One person, several devices: each takes in what the other shows, and the older one vouches for the newer.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { kindOf } from "../../kinds";
import { Code } from "../../parts/code";
import { Page, Waiting } from "../../parts/page";
import { Reader } from "../../parts/reader";
import { to } from "../../route";
import { lookAtSchool, useSchool } from "../../school";
import type { ApplicantView, CodeOut } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { answered } from "./join";
import { OwnCode, Spoken } from "./spoken";
import { TakeAnswer } from "./take-answer";

export function OwnDevice() {
  const own = useSchool();
  const code = useLoad("school-code", {});
  const [other, setOther] = useDraft<ApplicantView | null>("device/other", null);
  const [vouched, setVouched] = useDraft<CodeOut | null>("device/vouched", null);
  const [answer, setAnswer] = useDraft("school/answer", "");
  const [last, setLast] = useDraft<CodeOut | null>("device/back", null);
  const back = { href: to("school"), words: own.value?.school?.name ?? t("school") };
  if (!own.value || !code.value)
    return <Waiting screen="own-device" fault={own.fault ?? code.fault} again={() => (own.again(), code.again())} back={back} />;
  if (answer) return <TakeAnswer answer={answer} back={back} onAgain={() => setAnswer("")} onBack={(code) => (setAnswer(""), setLast(code))} />;
  if (last)
    return (
      <Page
        screen="device-back"
        title={t("device-back")}
        back={back}
        picture={<Code code={last} words={t("device-back-code")} />}
        foot={<a class="button go" href={to("school")} onClick={() => setLast(null)} data-test="device-done">{t("device-done")}</a>}
      >
        <p>{t("device-back-what")}</p>
      </Page>
    );
  const anew = (
    <button
      type="button"
      class="as-link"
      onClick={() => {
        setOther(null);
        setVouched(null);
      }}
      data-test="device-anew"
    >
      {t("device-anew")}
    </button>
  );
  if (vouched)
    return (
      <Page screen="device-vouched" title={t("device-vouched")} back={back} picture={<Code code={vouched} words={t("device-vouched-code")} />}>
        <p>{t("device-vouched-what")}</p>
        <section aria-labelledby="last">
          <h2 id="last">{t("device-last")}</h2>
          <p class="soft">{t("device-last-what")}</p>
          <Reader
            name="device/last"
            deed={t("device-take")}
            onText={async (text) => {
              const found = answered(text);
              setVouched(null);
              setOther(null);
              setAnswer(found);
            }}
          />
        </section>
        {anew}
      </Page>
    );
  if (other)
    return (
      <Page screen="device-vouch" title={t("device-vouch")} over={other.name} back={back}>
        <Spoken code={other.code} words={t("device-compare")} test="applicant-code" />
        <SignedForm
          deed={t("device-sign")}
          onSign={async (pin) => {
            setVouched(await call("school-vouch", { text: other.text, pin }));
            await lookAtSchool();
          }}
        >
          <p>{t("device-means")}</p>
        </SignedForm>
        {anew}
      </Page>
    );
  const take = async (text: string) => {
    if (kindOf(text) === "answer") setAnswer(text);
    else setOther(await call("school-applicant", { text }));
  };
  return (
    <Page screen="own-device" title={t("device-title")} back={back} picture={<Code code={code.value} words={t("school-code")} />}>
      <OwnCode code={own.value.code} />
      <ol class="steps">
        <li>{t("device-step-read")}</li>
        <li>{t("device-step-back")}</li>
        <li>{t("device-step-last")}</li>
      </ol>
      <section aria-labelledby="other-device">
        <h2 id="other-device">{t("device-shows")}</h2>
        <Reader name="device" deed={t("device-take")} onText={take} />
      </section>
    </Page>
  );
}

// Looking for somebody else: their phone's code in, a signed look out.
import { call } from "../../calls";
import { useDraft } from "../../drafts";
import { Code } from "../../parts/code";
import { Page } from "../../parts/page";
import { Reader } from "../../parts/reader";
import type { CodeOut, SecondLookView } from "../../types";
import { t } from "../../words";
import { SignedForm } from "../signed-form";
import { Joints, told, type Seen } from "./joints";

interface Asked {
  text: string;
  view: SecondLookView;
}

export function LookForOther() {
  const [asked, setAsked] = useDraft<Asked | null>("look/asked", null);
  const [seen, setSeen] = useDraft<Seen>("look/seen", {});
  const [reply, setReply] = useDraft<CodeOut | null>("look/reply", null);
  const back = { href: "#/", words: t("to-machines") };
  const anew = () => {
    setAsked(null);
    setSeen({});
    setReply(null);
  };

  if (!asked)
    return (
      <Page screen="look" title={t("look-title")} back={back}>
        <p>{t("look-what")}</p>
        <Reader
          name="look"
          deed={t("look-take")}
          onText={async (text) => setAsked({ text, view: await call("second-look-open", { text }) })}
        />
      </Page>
    );

  const { view } = asked;
  const again = (
    <button type="button" class="as-link" onClick={anew} data-test="look-anew">{t("look-anew")}</button>
  );
  if (reply)
    return (
      <Page screen="look-reply" title={t("look-reply")} over={view.machine} back={back} picture={<Code code={reply} words={t("look-code")} />}>
        <p>{t("look-reply-what")}</p>
        {again}
      </Page>
    );
  return (
    <Page screen="look-joints" title={view.machine} over={view.title} back={back}>
      {view.own && <p class="banner" data-test="own">{t("look-own")}</p>}
      <p>{t("look-how")}</p>
      <SignedForm
        deed={t("look-sign")}
        onSign={async (pin) => setReply(await call("second-look-sign", { text: asked.text, joints: told(view.joints, seen), pin }))}
      >
        <Joints joints={view.joints} seen={seen} onSeen={setSeen} />
        <p class="soft">{t("second-means")}</p>
      </SignedForm>
      {again}
    </Page>
  );
}

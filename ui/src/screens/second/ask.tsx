// A second pair of eyes: what the other phone reads from here, and what it shows back.
import { call } from "../../calls";
import { useLoad } from "../../hooks";
import { Code } from "../../parts/code";
import { Page, Waiting } from "../../parts/page";
import { Reader } from "../../parts/reader";
import { to, turnTo } from "../../route";
import { t } from "../../words";

export function SecondAsk({ machine }: { machine: string }) {
  const page = useLoad("machine", { id: machine });
  const { value, fault, again } = useLoad("second-look-ask", { machine });
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="second" fault={fault} again={again} back={back} />;
  const joints = page.value?.job?.independent ?? [];
  return (
    <Page
      screen="second"
      title={t("second-title")}
      over={page.value?.job?.title}
      back={back}
      picture={<Code code={value} words={t("second-code")} />}
    >
      <p>{t("second-what", { joints: joints.map((joint) => joint.words).join(", ") })}</p>
      <a class="button" href={to("machine", machine, "second", "here")} data-test="second-here">{t("second-here")}</a>
      <section aria-labelledby="reply">
        <h2 id="reply">{t("second-reply")}</h2>
        <p class="soft">{t("second-reply-what")}</p>
        <Reader
          name={`second/${machine}`}
          deed={t("second-take")}
          onText={async (text) => {
            await call("second-look-take", { machine, text });
            turnTo("machine", machine);
          }}
        />
      </section>
    </Page>
  );
}

// May it fly? A shape, a mark, a sentence, and every reason with its cause.
import { useLoad } from "../hooks";
import { Cautions } from "../parts/cautions";
import { PaintMark } from "../parts/mark";
import { Page, Waiting } from "../parts/page";
import { Reasons } from "../parts/reasons";
import { StateShape } from "../parts/shape";
import { to } from "../route";
import { t } from "../words";
import { Invented } from "./machines";

export function Verdict({ machine }: { machine: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  if (!value) return <Waiting screen="verdict" fault={fault} again={again} />;
  const { card } = value;
  const { verdict } = card;
  return (
    <Page
      screen="verdict"
      title={verdict.headline}
      over={t("verdict-over", { machine: card.name, hours: card.hours })}
      back={{ href: "#/", words: t("to-machines") }}
      pictureFirst
      picture={
        <div class={`sign big ${verdict.state}`} data-test="verdict" data-state={verdict.state}>
          <StateShape state={verdict.state} size={132} />
          <PaintMark state={verdict.state} />
        </div>
      }
      foot={
        <a class="button" href={to("machine", machine)} data-test="to-machine">
          {t("verdict-to-machine", { machine: card.name })}
        </a>
      }
    >
      {card.invented && <Invented />}
      <Reasons verdict={verdict} machine={machine} />
      <p class="soft">{t("sign-means")}</p>
      <Cautions />
    </Page>
  );
}

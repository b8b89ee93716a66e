// Signing that what is open at a point was put right, and how.
import { call } from "../calls";
import { useDraft } from "../drafts";
import { useLoad } from "../hooks";
import { TextArea } from "../parts/field";
import { Page, Waiting } from "../parts/page";
import { MeaningShape } from "../parts/shape";
import { to, turnTo } from "../route";
import { t } from "../words";
import { SignedForm } from "./signed-form";

export function PutRight({ machine, point }: { machine: string; point: string }) {
  const { value, fault, again } = useLoad("machine", { id: machine });
  const [how, setHow, done] = useDraft(`right/${machine}/${point}`, "");
  const back = { href: to("machine", machine), words: value?.card.name ?? t("to-machine") };
  if (!value) return <Waiting screen="put-right" fault={fault} again={again} back={back} />;
  const matters = value.open.filter((open) => open.point === point);
  const [first] = matters;
  return (
    <Page screen="put-right" title={first ? first.title : t("put-right")} over={t("put-right")} back={back}>
      {matters.length === 0 && <p>{t("put-right-nothing")}</p>}
      <ul class="rows">
        {matters.map((matter) => (
          <li key={matter.record}>
            <a href={to("record", matter.record, point)}>
              <MeaningShape means={matter.means} said />
              <span class="grow">
                <span class="strong">{matter.words}</span> <span class="block soft">{matter.since}</span>
              </span>
            </a>
          </li>
        ))}
      </ul>
      {first && (
        <SignedForm
          deed={t("put-right-sign")}
          onSign={async (pin) => {
            await call("rectify", { machine, point, how, pin });
            done();
            turnTo("machine", machine);
          }}
        >
          <TextArea words={t("put-right-how")} hint={t("put-right-how-hint")} value={how} onValue={setHow} test="how" />
          <p class="soft">{t("put-right-means")}</p>
        </SignedForm>
      )}
    </Page>
  );
}

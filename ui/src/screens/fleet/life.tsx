// How long components of one type last, in the app.
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { FaultNote } from "../../parts/fault";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { t } from "../../words";
import { AskedFields, inForce, NOTHING_ASKED, type Asked } from "./asked";
import { LifeBody } from "./life-body";

export function Life({ component }: { component: string }) {
  const [asked, setAsked] = useDraft<Asked>(`life/${component}`, NOTHING_ASKED);
  const { value, fault, again } = useLoad("life", { component, chance: asked.chance, in_force: inForce(asked) });
  const back = { href: to("fleet"), words: t("fleet-title") };
  if (!value) return <Waiting screen="life" fault={fault} again={again} back={back} />;
  return (
    <Page screen="life" broad title={value.part.words} over={t("fleet-lives")} back={back}>
      <LifeBody life={value}>
        <AskedFields asked={asked} chance={value.chance} onAsked={setAsked} />
        <FaultNote fault={fault} again={again} />
      </LifeBody>
    </Page>
  );
}

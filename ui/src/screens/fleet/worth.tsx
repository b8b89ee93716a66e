// What the points of the lists are worth, in the app.
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { t } from "../../words";
import { WorthBody } from "./worth-body";

export function Worth() {
  const { value, fault, again } = useLoad("list-worth", {});
  const back = { href: to("fleet"), words: t("fleet-title") };
  if (!value) return <Waiting screen="worth" fault={fault} again={again} back={back} />;
  return (
    <Page screen="worth" broad title={t("worth-title")} back={back}>
      <WorthBody worth={value} heading="h2" />
    </Page>
  );
}

// How people look, in the app: an instructor sees everybody of the school, anybody else themselves.
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { to } from "../../route";
import { t } from "../../words";
import { LookingBody } from "./looking-body";

export function Looking() {
  const { value, fault, again } = useLoad("looking", {});
  const back = { href: to("fleet"), words: t("fleet-title") };
  if (!value) return <Waiting screen="looking" fault={fault} again={again} back={back} />;
  return (
    <Page screen="looking" broad title={t("looking-title")} back={back}>
      <LookingBody report={value} heading="h2" />
    </Page>
  );
}

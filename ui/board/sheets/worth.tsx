// What the points of the lists are worth, for their author.
import { WorthBody } from "../../src/screens/fleet/worth-body";
import type { ListWorth } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";

export function WorthSheet() {
  const { value, fault, again } = useGet<ListWorth>("worth");
  if (!value) return <Loading fault={fault} again={again} />;
  return (
    <>
      <SheetTitle>{t("wall-worth")}</SheetTitle>
      <WorthBody worth={value} heading="h3" />
    </>
  );
}

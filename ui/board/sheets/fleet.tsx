// How long parts last, over all machines of the school.
import { PartsList } from "../../src/screens/fleet/parts-list";
import type { LifePart } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";

export function FleetSheet() {
  const { value, fault, again } = useGet<LifePart[]>("lives");
  if (!value) return <Loading fault={fault} again={again} />;
  return (
    <>
      <SheetTitle>{t("wall-lives")}</SheetTitle>
      <p>{t("wall-lives-what")}</p>
      <PartsList parts={value} />
    </>
  );
}

// How people look, for an instructor.
import { LookingBody } from "../../src/screens/fleet/looking-body";
import type { LookingReport } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";

export function LookingSheet() {
  const { value, fault, again } = useGet<LookingReport>("looking");
  if (!value) return <Loading fault={fault} again={again} />;
  return (
    <>
      <SheetTitle>{t("wall-looking")}</SheetTitle>
      <LookingBody report={value} heading="h3" />
    </>
  );
}

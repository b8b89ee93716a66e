// How long components of one type last, on the board.
import { useState } from "preact/hooks";
import { FaultNote } from "../../src/parts/fault";
import { to } from "../../src/route";
import { AskedFields, inForce, NOTHING_ASKED, type Asked } from "../../src/screens/fleet/asked";
import { LifeBody } from "../../src/screens/fleet/life-body";
import type { LifeView } from "../../src/types";
import { t } from "../../src/words";
import { useGet } from "../ask";
import { SheetTitle } from "../sheet";
import { Loading } from "./loading";

export function LifeSheet({ component }: { component: string }) {
  const [asked, setAsked] = useState<Asked>(NOTHING_ASKED);
  const [last, setLast] = useState<LifeView | null>(null);
  const { value, fault, again } = useGet<LifeView>(`life/${encodeURIComponent(component)}${queryOf(asked)}`);
  // What was shown stays while more is asked for.
  if (value && value !== last) setLast(value);
  const shown = value ?? last;
  if (!shown) return <Loading fault={fault} again={again} />;
  return (
    <>
      <SheetTitle over={<a href={to("fleet")}>{t("wall-lives")}</a>}>{shown.part.words}</SheetTitle>
      <LifeBody life={shown}>
        <AskedFields asked={asked} chance={shown.chance} onAsked={setAsked} />
        <FaultNote fault={fault} again={again} />
      </LifeBody>
    </>
  );
}

function queryOf(asked: Asked): string {
  const query = new URLSearchParams();
  const hours = inForce(asked);
  if (asked.chance !== null) query.set("chance", String(asked.chance));
  if (hours !== null) query.set("in_force", String(hours));
  return query.size > 0 ? `?${query}` : "";
}

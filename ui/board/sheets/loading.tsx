// A sheet that waits for the server, or couldn't get what it shows.
import type { Fault } from "../../src/calls";
import { FaultNote } from "../../src/parts/fault";
import { t } from "../../src/words";
import { SheetTitle } from "../sheet";

export function Loading({ fault, again }: { fault: Fault | null; again: () => void }) {
  return (
    <>
      <SheetTitle>{t(fault ? "waiting-failed" : "waiting")}</SheetTitle>
      <FaultNote fault={fault} again={again} />
    </>
  );
}

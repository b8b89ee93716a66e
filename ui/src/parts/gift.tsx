// A file for the person: a button, and where the file went.
import { useState } from "preact/hooks";
import { saveFile } from "../files";
import { useAct } from "../hooks";
import type { FileOut } from "../types";
import { t } from "../words";
import { FaultNote } from "./fault";

export function FileGift({ words, test, make }: { words: string; test: string; make: () => Promise<FileOut> }) {
  const [saved, setSaved] = useState("");
  const { busy, fault, act, again } = useAct();
  const give = () =>
    act(async () => {
      setSaved("");
      const file = await make();
      setSaved(await saveFile(file.name, file.text));
    });
  return (
    <div class="gift">
      <button type="button" aria-disabled={busy} onClick={give} data-test={test}>{words}</button>
      <p role="status" data-test={`${test}-saved`}>{saved && t("papers-saved", { place: saved })}</p>
      <FaultNote fault={fault} again={again} />
    </div>
  );
}

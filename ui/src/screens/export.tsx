// Giving a machine's records away as a file that anyone can verify.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { saveFile } from "../files";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { t } from "../words";

export function Export({ machine }: { machine: string }) {
  const [saved, setSaved] = useState("");
  const { busy, fault, act, again } = useAct();
  const give = () =>
    act(async () => {
      const file = await call("export", { machine });
      setSaved(await saveFile(file.name, file.text));
    });
  return (
    <>
      <button type="button" class="as-link" aria-disabled={busy} onClick={give} data-test="export">
        {t("export")}
      </button>
      <div class="whole-line">
        <p role="status" data-test="exported">{saved && t("exported", { place: saved })}</p>
        <FaultNote fault={fault} again={again} />
      </div>
    </>
  );
}

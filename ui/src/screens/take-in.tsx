// Taking a file's records into this device: those that are good; each other line is told.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { to } from "../route";
import type { ImportView } from "../types";
import { lookAtSchool } from "../school";
import { t } from "../words";

export function TakeIn({ text, machines }: { text: string; machines: { id: string; words: string }[] }) {
  const [taken, setTaken] = useState<ImportView | null>(null);
  const { busy, fault, act, again } = useAct();
  const take = () =>
    act(async () => {
      setTaken(null);
      setTaken(await call("import", { text }));
      await lookAtSchool();
    });
  return (
    <section aria-labelledby="take-in">
      <h2 id="take-in">{t("take-in")}</h2>
      <p class="soft">{t("take-in-what")}</p>
      <button type="button" aria-disabled={busy} onClick={take} data-test="take-in">{t(busy ? "take-in-busy" : "take-in-do")}</button>
      <FaultNote fault={fault} again={again} />
      <div role="status">
        {taken && (
          <div class="card" data-test="taken-in" data-taken={taken.taken}>
            <p class="strong">{taken.words}</p>
            {taken.known > 0 && <p class="soft">{t("take-in-known", { count: taken.known })}</p>}
            {taken.refused.length > 0 && (
              <ul class="plain-list">{taken.refused.map((line) => <li key={line}>{line}</li>)}</ul>
            )}
          </div>
        )}
      </div>
      {taken && (
        <nav class="links" aria-label={t("machines-others")}>
          {machines.map((machine) => <a key={machine.id} href={to("machine", machine.id)}>{machine.words}</a>)}
        </nav>
      )}
    </section>
  );
}

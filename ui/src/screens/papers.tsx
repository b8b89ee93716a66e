// Papers and tables to take away: each a button, and where the file went.
import { useState } from "preact/hooks";
import { call } from "../calls";
import { saveBytes } from "../files";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import type { FileBytes } from "../types";
import { t } from "../words";

interface Paper {
  words: string;
  test: string;
  make: () => Promise<FileBytes>;
}

/** A machine's label, its table and its calendar. */
export function MachinePapers({ machine }: { machine: string }) {
  return (
    <Papers
      papers={[
        { words: t("papers-label"), test: "label", make: () => call("label", { machine }) },
        { words: t("papers-table"), test: "csv", make: () => call("csv", { machine }) },
        { words: t("papers-calendar"), test: "calendar", make: () => call("calendar", { machine }) },
      ]}
    />
  );
}

/** The record sheet. */
export function RecordSheet({ record }: { record: string }) {
  return (
    <Papers
      papers={[
        { words: t("papers-sheet-a4"), test: "sheet-a4", make: () => call("sheet", { record, paper: "a4" }) },
        { words: t("papers-sheet-letter"), test: "sheet-letter", make: () => call("sheet", { record, paper: "letter" }) },
      ]}
    />
  );
}

function Papers({ papers }: { papers: Paper[] }) {
  const [saved, setSaved] = useState("");
  const { busy, fault, act, again } = useAct();
  return (
    <section aria-labelledby="papers">
      <h2 id="papers">{t("papers")}</h2>
      <div class="links">
        {papers.map(({ words, test, make }) => (
          <button
            key={test}
            type="button"
            class="as-link"
            aria-disabled={busy}
            onClick={() =>
              act(async () => {
                setSaved("");
                setSaved(await saveBytes(await make()));
              })
            }
            data-test={test}
          >
            {words}
          </button>
        ))}
      </div>
      <p role="status" data-test="paper-saved">{saved && t("papers-saved", { place: saved })}</p>
      <FaultNote fault={fault} again={again} />
    </section>
  );
}

// What is wrong with the files, by file and line; or what changes for the members.
import type { PublishPreview } from "../../types";
import { t } from "../../words";

export function Preview({ preview }: { preview: PublishPreview }) {
  const bad = preview.faults.length > 0;
  return (
    <section class="card" data-test="publish-preview" data-good={!bad}>
      <h2>{bad ? t("publish-faults", { count: preview.faults.length }) : t("publish-good", { version: preview.version })}</h2>
      {bad ? (
        <ul class="reasons">
          {preview.faults.map((fault, index) => (
            <li key={index} class="reason" data-test="publish-fault">
              <p class="mono">{t("publish-where", { file: fault.file, line: fault.line })}</p>
              <p class="strong">{fault.words}</p>
              {fault.hint && <p class="soft">{fault.hint}</p>}
            </li>
          ))}
        </ul>
      ) : (
        <ul class="plain-list">
          {preview.changes.map((change, index) => <li key={index}>{change}</li>)}
        </ul>
      )}
    </section>
  );
}

// How it stands with the server, in a sentence; the stripe of paint is whole only while both hold the same.
import type { ComponentChildren } from "preact";
import { PaintMark } from "../../parts/mark";
import type { State, SyncView } from "../../types";
import { t } from "../../words";

const MARK: Record<string, State> = { done: "fit", never: "limited", waits: "limited", failed: "limited", distrusted: "grounded" };

/** What hasn't gone out yet, and what came back; nothing where there is neither. */
export function waitingWords(sync: SyncView): string {
  const parts = [
    sync.records > 0 && t("sync-records", { count: sync.records }),
    sync.photos > 0 && t("sync-photos", { count: sync.photos }),
    sync.stuck.length > 0 && t("sync-stuck", { count: sync.stuck.length }),
  ];
  return parts.filter(Boolean).join(" · ");
}

export function SyncCard({ sync, children }: { sync: SyncView; children?: ComponentChildren }) {
  const mark = sync.records + sync.stuck.length > 0 && sync.state === "done" ? "limited" : MARK[sync.state];
  const waiting = waitingWords(sync);
  return (
    <div class="card sync-card" data-test="sync" data-state={sync.state}>
      {mark && <PaintMark state={mark} />}
      <p class={`strong ${sync.state === "distrusted" ? "stop" : ""}`}>{sync.words}</p>
      {waiting && <p data-test="sync-waiting">{waiting}</p>}
      {sync.hint && <p class="soft">{sync.hint}</p>}
      {children}
    </div>
  );
}

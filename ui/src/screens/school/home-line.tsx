// Over the machines, where there is a school: one quiet line on how it stands with its server.
import { to } from "../../route";
import { school } from "../../school";
import type { SyncView } from "../../types";
import { t } from "../../words";
import { waitingWords } from "./sync-card";

/** Where there is no connection the whole reason is one tap away: it is no news to who stands in a field. */
function quietWords(sync: SyncView): string {
  if (sync.state === "none") return t("sync-none-short");
  return sync.state === "failed" ? t("sync-failed-short") : sync.words;
}

export function SchoolLine() {
  const now = school.value;
  if (!now?.school) return null;
  const { sync } = now;
  const waiting = waitingWords(sync);
  const lies = sync.state === "distrusted";
  return (
    <a class="quiet" href={to("school")} data-test="school-line" data-state={sync.state}>
      <span class="grow">
        <span class="block strong">{now.school.name}</span>{" "}
        <span class={lies ? "stop strong" : "soft"}>{quietWords(sync)}</span>{" "}
        {waiting && <span class={`block ${sync.stuck.length > 0 ? "strong" : "soft"}`}>{waiting}</span>}{" "}
        {sync.stuck[0] && <span class="block soft">{sync.stuck[0].words}</span>}
      </span>
    </a>
  );
}

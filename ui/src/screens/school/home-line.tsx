// Over the machines, where there is a school: one quiet line on how it stands with its server.
import { to } from "../../route";
import { school } from "../../school";
import { t } from "../../words";
import { waitingWords } from "./sync-card";

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
        <span class={lies ? "stop strong" : "soft"}>{sync.state === "none" ? t("sync-none-short") : sync.words}</span>{" "}
        {waiting && <span class={`block ${sync.stuck.length > 0 ? "strong" : "soft"}`}>{waiting}</span>}
      </span>
    </a>
  );
}

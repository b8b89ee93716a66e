// Why: every reason with what would clear it, each a way to what caused it.
import type { ReasonView, VerdictView } from "../types";
import { to } from "../route";
import { t } from "../words";
import { StateShape } from "./shape";

/** Where a reason leads: the flight's preparation, its record, its limit, or else the machine. */
function placeOf(reason: ReasonView, machine: string): string {
  if (reason.of_flight) return to("machine", machine, "flight");
  if (reason.record) return to("record", reason.record, ...(reason.point ? [reason.point] : []));
  if (reason.band) return to("machine", machine, "limit", reason.band);
  return to("machine", machine);
}

export function Reasons({ verdict, machine }: { verdict: VerdictView; machine: string }) {
  if (verdict.reasons.length === 0) return null;
  return (
    <ul class="reasons" aria-label={t("reasons")}>
      {verdict.reasons.map((reason, index) => (
        <li key={index} class="reason" data-test={`reason-${reason.rule}`}>
          <a href={placeOf(reason, machine)}>
            <StateShape state={reason.state} size={24} />
            <span class="strong">{reason.words}</span>
          </a>
          <p class="soft">{reason.clears}</p>
          {reason.because.length > 0 && (
            <ul class="because">
              {reason.because.map((fact, number) => (
                <li key={number}>{fact.record ? <a href={to("record", fact.record)}>{fact.words}</a> : fact.words}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}

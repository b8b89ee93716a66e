// A band drawn as a bar, with a needle for the value being typed.
import type { Meaning } from "../types";
import { figure } from "../words";

interface BandProps {
  low: number | null;
  high: number | null;
  value: number | null;
  means: Meaning | undefined;
}

/** The scale runs half a band's width beyond each end; a value further out lies at the edge. */
export function BandBar({ low, high, value, means }: BandProps) {
  const width = low !== null && high !== null && high > low ? high - low : Math.abs(high ?? low ?? 1) || 1;
  const from = (low ?? (high ?? 0) - width) - width / 2;
  const to = (high ?? (low ?? 0) + width) + width / 2;
  const at = (x: number) => 12 + 330 * Math.min(1, Math.max(0, (x - from) / (to - from)));
  const left = low === null ? 0 : at(low);
  const right = high === null ? 354 : at(high);
  return (
    <div class="band" aria-hidden="true">
      <svg viewBox="0 0 354 40" preserveAspectRatio="none">
        <rect class="scale" x="0" y="5" width="354" height="30" />
        <rect class="within" x={left} y="5" width={right - left} height="30" />
        {low !== null && <path class="end" d={`M${left} 0V40`} />}
        {high !== null && <path class="end" d={`M${right} 0V40`} />}
        {value !== null && <path class={`needle ${means ?? ""}`} d={`M${at(value)} 0V40`} />}
      </svg>
      {low !== null && <span class="end-number low" style={{ left: `${(100 * left) / 354}%` }}>{figure(low)}</span>}
      {high !== null && <span class="end-number" style={{ left: `${(100 * right) / 354}%` }}>{figure(high)}</span>}
    </div>
  );
}

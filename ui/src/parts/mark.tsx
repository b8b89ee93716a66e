// The stripe of paint across a joint: unbroken while nothing moved, shifted where something did.
import type { State } from "../types";

const STRIPE: Record<State, string> = {
  fit: "M10 62L236 26",
  limited: "M10 62L116 45M134 46L236 30",
  grounded: "M10 64L112 48M136 26L236 10",
};

export function PaintMark({ state }: { state: State }) {
  return (
    <svg class="mark" viewBox="0 0 246 76" aria-hidden="true">
      <path d={STRIPE[state]} />
    </svg>
  );
}

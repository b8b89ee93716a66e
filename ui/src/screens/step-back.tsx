// Taking the last answer back: one tap, wherever in the walk one stands.
import { call } from "../calls";
import type { Walk } from "../types";
import { moveBack } from "../walking";
import { t } from "../words";

export function StepBack({ walk, busy, act }: { walk: Walk; busy: boolean; act: (deed: () => Promise<void>) => void }) {
  const can = walk.progress.can_undo;
  return (
    <button
      type="button"
      class="tool"
      aria-disabled={busy || !can}
      onClick={() => can && act(async () => moveBack(walk, await call("undo", { walk: walk.id })))}
      data-test="step-back"
    >
      {t("tool-step-back")}
    </button>
  );
}

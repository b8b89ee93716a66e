// What went wrong, what to do about it, and trying again; what was typed stays where it is.
import type { Fault } from "../calls";
import { t } from "../words";

export function FaultNote({ fault, again }: { fault: Fault | null; again?: (() => void) | undefined }) {
  return (
    <div role="alert" class="fault-place">
      {fault && (
        <div class="fault" data-test="fault" data-kind={fault.kind}>
          <p class="strong">{fault.message}</p>
          {fault.hint && <p>{fault.hint}</p>}
          {again && (
            <button type="button" class="small" onClick={again} data-test="try-again">
              {t("try-again")}
            </button>
          )}
        </div>
      )}
    </div>
  );
}

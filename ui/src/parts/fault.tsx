// What went wrong, what to do about it, and trying again; what was typed stays where it is.
import { useEffect, useRef } from "preact/hooks";
import { hush } from "../aloud";
import type { Fault } from "../calls";
import { t } from "../words";

export function FaultNote({ fault, again }: { fault: Fault | null; again?: (() => void) | undefined }) {
  const place = useRef<HTMLDivElement>(null);
  // On a long form it comes up under the thumb or below the screen: it is brought where it can be read.
  useEffect(() => {
    if (!fault) return;
    place.current?.scrollIntoView({ block: "nearest" });
    // What went wrong isn't talked over.
    hush();
  }, [fault]);
  return (
    <div role="alert" class="fault-place" ref={place}>
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

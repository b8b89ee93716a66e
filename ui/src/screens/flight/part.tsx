// One question of the preparation: what comes of it, and its values once it is opened; or left out.
import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { EmptyShape, StateShape } from "../../parts/shape";
import type { ReasonView } from "../../types";
import { t } from "../../words";
import type { Part } from "./draft";

export interface Standing {
  asked: boolean;
  reason: ReasonView | undefined;
  /** What is wrong or missing in it. */
  fault: string | undefined;
}

interface PartProps {
  part: Part;
  standing: Standing;
  open: boolean;
  onOpen: (open: boolean) => void;
  onAsked: (asked: boolean) => void;
  children: ComponentChildren;
}

export function PartOf({ part, standing, open, onOpen, onAsked, children }: PartProps) {
  const id = useId();
  return (
    <section class={`flight-part ${open ? "open" : ""}`} aria-labelledby={`${id}-question`} data-test={`flight-part-${part}`}
      data-state={standing.asked ? (standing.reason?.state ?? "open") : "out"}>
      <h2 id={`${id}-question`}>
        <button type="button" class="flight-question" aria-expanded={open} aria-controls={`${id}-values`} onClick={() => onOpen(!open)} data-test={`flight-open-${part}`}>
          <span class="grow">{t(`flight-part-${part}`)}</span>
        </button>
      </h2>
      {/* Told while it is typed; not for the parts that it changes on the way. */}
      <div role={open ? "status" : undefined}>
        <Result standing={standing} />
      </div>
      <div id={`${id}-values`} class="flight-values">
        {open && (
          <>
            {children}
            <button type="button" class="as-link" onClick={() => onAsked(false)} data-test={`flight-out-${part}`}>
              {t("flight-leave-out")}
              <span class="unseen">: {t(`flight-part-${part}`)}</span>
            </button>
          </>
        )}
      </div>
    </section>
  );
}

/** As the verdict will say it. */
export function Result({ standing: { asked, reason, fault } }: { standing: Standing }) {
  if (!asked) return <p class="flight-result soft"><EmptyShape /><span>{t("flight-left-out")}</span></p>;
  if (fault) return <p class="flight-result" data-test="flight-fault"><EmptyShape /><span>{fault}</span></p>;
  if (!reason) return <p class="flight-result soft"><EmptyShape /><span>{t("flight-reckoning")}</span></p>;
  return (
    <div class="flight-result">
      <StateShape state={reason.state} size={24} />
      <div class="grow">
        <p class="strong">{reason.words}</p>
        {reason.clears && <p class="soft">{reason.clears}</p>}
        {reason.because.map((fact, index) => <p key={index} class="soft">{fact.words}</p>)}
      </div>
    </div>
  );
}

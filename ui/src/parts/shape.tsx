// The shapes that carry meaning without colour: filled ring, half ring, barred ring, empty ring.
import type { Look, Meaning, State } from "../types";
import { t } from "../words";

type Form = "filled" | "half" | "barred" | "empty" | "none";

const FORM_OF_MEANING: Record<Meaning, Form> = {
  serviceable: "filled",
  watch: "half",
  unserviceable: "barred",
  "not-fitted": "none",
};

const FORM_OF_STATE: Record<State, Form> = { fit: "filled", limited: "half", grounded: "barred" };

function Ring({ form, size = 30 }: { form: Form; size?: number | undefined }) {
  return (
    <svg class={`shape ${form}`} viewBox="0 0 30 30" style={{ "--size": `${size / 16}rem` }} aria-hidden="true">
      <circle cx="15" cy="15" r="12" />
      {form === "half" && <path class="fill" d="M15 3A12 12 0 0 0 15 27Z" />}
      {form === "barred" && <path class="bar" d="M5 15H25" />}
      {form === "none" && <path class="bar" d="M7 23L23 7" />}
    </svg>
  );
}

/** What an answer means. Its words stand beside it; `said` adds the meaning for those who don't see it. */
export function MeaningShape({ means, size, said }: { means: Meaning; size?: number; said?: boolean }) {
  return (
    <>
      <Ring form={FORM_OF_MEANING[means]} size={size} />
      {said && <span class="unseen">{meaningWords(means)} </span>}
    </>
  );
}

/** Whether it may fly; the headline stands beside it. */
export function StateShape({ state, size }: { state: State; size?: number }) {
  return <Ring form={FORM_OF_STATE[state]} size={size} />;
}

/** Whether a point still wants a look, and what was found if not. */
export function LookShape({ look, means }: { look: Look; means?: Meaning | undefined }) {
  const form = look === "done" && means ? FORM_OF_MEANING[means] : "empty";
  return (
    <>
      <Ring form={form} />
      <span class="unseen">{look === "done" && means ? meaningWords(means) : t(`look-${look}`)} </span>
    </>
  );
}

export function EmptyShape() {
  return <Ring form="empty" />;
}

export function meaningWords(means: Meaning): string {
  return t(`means-${means}`);
}

// Labelled inputs: one way to ask for a text, a number, a date.
import type { InputHTMLAttributes } from "preact";
import { useId } from "preact/hooks";

interface FieldProps {
  words: string;
  value: string;
  onValue: (value: string) => void;
  hint?: string;
  test: string;
  input?: InputHTMLAttributes<HTMLInputElement>;
}

export function Field({ words, value, onValue, hint, test, input }: FieldProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{words}</label>
      {hint && <p id={`${id}-hint`} class="soft">{hint}</p>}
      <input
        id={id}
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onInput={(event) => onValue(event.currentTarget.value)}
        data-test={test}
        {...input}
      />
    </div>
  );
}

export function TextArea({ words, value, onValue, hint, test, rows = 4 }: Omit<FieldProps, "input"> & { rows?: number }) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{words}</label>
      {hint && <p id={`${id}-hint`} class="soft">{hint}</p>}
      <textarea
        id={id}
        rows={rows}
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onInput={(event) => onValue(event.currentTarget.value)}
        data-test={test}
      />
    </div>
  );
}

/** The PIN, as digits on the phone's number keys. */
export function PinField({ words, value, onValue, hint, test = "pin" }: Omit<FieldProps, "input" | "test"> & { test?: string }) {
  return (
    <Field
      words={words}
      value={value}
      onValue={onValue}
      {...(hint ? { hint } : {})}
      test={test}
      input={{ type: "password", inputMode: "numeric", autocomplete: "off" }}
    />
  );
}

/** A number as people type it: point or comma; none while it isn't one. */
export function numberOf(text: string): number | null {
  const plain = text.trim().replace(",", ".");
  return /^[-−]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain.replace("−", "-")) : null;
}

// A refused tool in hand: why it is used all the same is said before any nut is turned with it.
import { useRef, useState } from "preact/hooks";
import type { Fault } from "../../calls";
import { FaultNote } from "../../parts/fault";
import { TextArea } from "../../parts/field";
import { t } from "../../words";

interface WhyProps {
  /** What is against the tool. */
  against: string[];
  reason: string;
  onReason: (reason: string) => void;
  onSaid: () => void;
}

export function WhyAllTheSame({ against, reason, onReason, onSaid }: WhyProps) {
  const [fault, setFault] = useState<Fault | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const say = () => {
    if (reason.trim() !== "") return onSaid();
    setFault({ kind: "reason-missing", message: t("torque-reason-first"), hint: t("torque-reason-first-hint") });
    form.current?.querySelector("textarea")?.focus();
  };
  return (
    <form
      ref={form}
      onSubmit={(event) => {
        event.preventDefault();
        say();
      }}
    >
      <p class="against" data-test="against">
        <strong>{t("torque-refused")}</strong> {against.join(" ")}
      </p>
      <TextArea words={t("torque-reason-use")} hint={t("torque-reason-hint")} value={reason} onValue={onReason} test="reason" rows={2} />
      <FaultNote fault={fault} />
      <button type="submit" data-test="use-all-the-same">{t("torque-use-all-the-same")}</button>
    </form>
  );
}

// A form that ends in a signature: what is said above, the PIN and the deed below.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { useAct } from "../hooks";
import { FaultNote } from "../parts/fault";
import { PinField } from "../parts/field";
import { t } from "../words";

interface SignedFormProps {
  children: ComponentChildren;
  /** The words on the button. */
  deed: string;
  /** Whose PIN, where it isn't this device's own person's. */
  pinWords?: string;
  onSign: (pin: string) => Promise<void>;
}

export function SignedForm({ children, deed, pinWords, onSign }: SignedFormProps) {
  const [pin, setPin] = useState("");
  const { busy, fault, act } = useAct();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void act(() => onSign(pin));
      }}
    >
      {children}
      <PinField words={pinWords ?? t("pin-yours")} value={pin} onValue={setPin} />
      <FaultNote fault={fault} />
      <button type="submit" class="go" aria-disabled={busy} data-test="sign">
        {busy ? t("sign-busy") : deed}
      </button>
    </form>
  );
}

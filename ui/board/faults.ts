// What the server itself refuses, in the page's language; what its copy of the log refuses comes in it already.
import type { Fault } from "../src/calls";
import { t } from "../src/words";

const OWN = [
  "code-gone",
  "looking-instructors",
  "no-device",
  "not-a-member",
  "not-instructor",
  "not-yours",
  "other-page",
  "passphrase-off",
  "passphrase-too-often",
  "passphrase-wrong",
  "signed-out",
];

export function inWords(fault: Fault): Fault {
  if (!OWN.includes(fault.kind)) return fault;
  // How long to wait is the only figure in any of them.
  const minutes = Number(/\d+/.exec(fault.message)?.[0] ?? 0);
  return { ...fault, message: t(`wall-fault-${fault.kind}`, { minutes }), hint: t(`wall-fault-${fault.kind}-hint`) };
}

// What a code is about, by how its text begins.
const KINDS = {
  "WM1MACHINE:": "label",
  "WM1RECORD:": "record",
  "WM1ASK:": "look",
  "WM1JOIN:": "applicant",
  "WM1ADMIT:": "answer",
  "WM1SEEN:": "checkpoint",
  "WM1DESK:": "desk",
} as const;

export type Kind = (typeof KINDS)[keyof typeof KINDS];

/** None where it is no code of ours. */
export function kindOf(text: string): Kind | null {
  const found = Object.entries(KINDS).find(([beginning]) => text.trim().startsWith(beginning));
  return found ? found[1] : null;
}

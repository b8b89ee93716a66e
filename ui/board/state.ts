// What the whole page shares: who is signed in, the board as last told, and whether it is live.
import { signal } from "@preact/signals";
import type { Board, CodeOut, Role } from "../src/types";

export interface Place {
  school: string;
  invented: boolean;
  language: string;
  cautions: string[];
  /** Whether a passphrase lets look. */
  passphrase: boolean;
  signed_in: { name: string | null; role: Role | null; may_prepare: boolean; until: number } | null;
}

/** What this device's holder prepared and hasn't signed. */
export interface Draft {
  id: string;
  machine: string | null;
  kind: string;
  body: { point?: string; title?: string; version?: number };
  made: number;
  code: CodeOut;
}

export interface Live {
  state: "coming" | "live" | "lost";
  since: Date;
}

export const place = signal<Place | null>(null);
export const board = signal<Board | null>(null);
export const drafts = signal<Draft[]>([]);
export const live = signal<Live>({ state: "coming", since: new Date() });

/** The session is over: what was shown is put away. */
export function signedOut() {
  board.value = null;
  drafts.value = [];
  if (place.value) place.value = { ...place.value, signed_in: null };
}

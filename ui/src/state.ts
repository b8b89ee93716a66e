// What several screens share.
import { signal } from "@preact/signals";
import { call } from "./calls";
import type { Start, Walk, WalkProgress } from "./types";
import { speak, wishedLanguage } from "./words";

export const start = signal<Start | null>(null);
export const drawings = signal<Record<string, string>>({});

/** The list being walked. */
export const walk = signal<Walk | null>(null);

/** Takes what the core says of itself. */
export function opened(told: Start) {
  speak(told.language);
  start.value = told;
}

/** Opens the app: what the core is, and all drawings, once. */
export async function open() {
  const [told, all] = await Promise.all([call("start", {}), call("drawings", {})]);
  drawings.value = all;
  opened(await inTheirLanguage(told));
}

/** Before anybody signs here nobody has chosen a language yet: the browser's holds, where there are words in it. */
async function inTheirLanguage(told: Start): Promise<Start> {
  const language = wishedLanguage(told.languages);
  if (told.person || !language || language === told.language) return told;
  return choose(told, { language });
}

/** What a person chooses for this device. */
export type Choice = Partial<Pick<Start, "language" | "patience_minutes" | "read_aloud" | "units">>;

/** Keeps a choice; all others stay. */
export function choose(now: Start, choice: Choice): Promise<Start> {
  const { language, patience_minutes, read_aloud, units } = { ...now, ...choice };
  return call("settings", { language, patience_minutes, read_aloud, units });
}

/** Opens or resumes a list; the core decides whether it steps back. */
export async function openWalk(machine: string, occasion: string) {
  walk.value = await call("walk", { machine, occasion });
}

/** What a screen reader is told when the screen itself moves on. */
export const announced = signal("");
let silence: number | undefined;

/** Says it once; what was said long ago isn't found on a later screen. */
export function announce(words: string) {
  announced.value = words;
  clearTimeout(silence);
  silence = window.setTimeout(() => (announced.value = ""), 5000);
}

/** Takes where the inspector stands now. */
export function advanced(progress: WalkProgress) {
  if (walk.value) walk.value = { ...walk.value, progress };
}

/** The list just signed or put aside, and what came of it. */
export const finished = signal<{ machine: string; occasion: string; place: string[] } | null>(null);

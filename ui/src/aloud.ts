// Reading aloud, where the platform has a voice for the language in use.
import { computed, signal } from "@preact/signals";
import { spoken } from "./spoken";
import { language } from "./words";

const speech = "speechSynthesis" in window ? window.speechSynthesis : undefined;
const voices = signal<SpeechSynthesisVoice[]>(speech?.getVoices() ?? []);
// Browsers learn of their voices late.
speech?.addEventListener?.("voiceschanged", () => (voices.value = speech.getVoices()));

/** The voice for the language in use: one on this device before one that needs a signal. */
const voice = computed(() => {
  const fitting = voices.value.filter(({ lang }) => lang.toLowerCase().split(/[-_]/)[0] === language.value);
  return fitting.find(({ localService }) => localService) ?? fitting[0];
});

/** Whether anything can be read aloud here. */
export const canRead = computed(() => voice.value !== undefined);

/** What is being read, by the name that was given for it; none while it is quiet. */
export const reading = signal<string | null>(null);

/** Reads sentences one after the other, in this order: a caution that comes first is heard whole before anything else. */
export function readAloud(name: string, sentences: string[]) {
  hush();
  if (!speech || !voice.value) return;
  reading.value = name;
  sentences.forEach((sentence, index) => {
    const words = new SpeechSynthesisUtterance(spoken(sentence));
    words.lang = voice.value?.lang ?? language.value;
    words.voice = voice.value ?? null;
    const over = () => reading.value === name && (reading.value = null);
    if (index === sentences.length - 1) words.onend = over;
    words.onerror = over;
    speech.speak(words);
  });
}

/** Quiet at once: somebody answered, or the screen is another. */
export function hush() {
  if (reading.value === null) return;
  reading.value = null;
  speech?.cancel();
}

// What was typed and not yet given: kept while the app is open, so that leaving a screen loses nothing.
import { useState } from "preact/hooks";

const drafts = new Map<string, unknown>();

/** Like `useState`, and still there when the screen comes back. */
export function useDraft<T>(name: string, first: T) {
  const [value, setValue] = useState<T>(() => (drafts.has(name) ? (drafts.get(name) as T) : first));
  const put = (next: T) => {
    drafts.set(name, next);
    setValue(() => next);
  };
  const done = () => void drafts.delete(name);
  return [value, put, done] as const;
}

/** Lays something ready for a screen that is come to next. */
export const layReady = (name: string, value: unknown) => void drafts.set(name, value);

/** Like `useDraft`, and still there after the phone died: for what takes long and is given as one. */
export function useKept<T>(name: string, first: T) {
  const [value, setValue] = useState<T>(() => ({ ...first, ...read<T>(name) }));
  const put = (next: T) => {
    keep(name, JSON.stringify(next));
    setValue(() => next);
  };
  const done = () => keep(name, null);
  return [value, put, done] as const;
}

// A browser may refuse to keep anything; then it lasts as long as the page.
function keep(name: string, text: string | null) {
  drafts.set(name, text ?? "null");
  try {
    if (text === null) localStorage.removeItem(name);
    else localStorage.setItem(name, text);
  } catch {
    return;
  }
}

function read<T>(name: string): Partial<T> {
  const here = drafts.get(name);
  try {
    return (JSON.parse(typeof here === "string" ? here : (localStorage.getItem(name) ?? "null")) ?? {}) as Partial<T>;
  } catch {
    return {};
  }
}

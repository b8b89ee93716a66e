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

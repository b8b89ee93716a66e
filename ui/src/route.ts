// Where the person is, kept in the address: the browser's own Back goes one place back.
import { signal } from "@preact/signals";

/** The address's parts, decoded: `#/machine/ID/edit` is `["machine", ID, "edit"]`. */
export const route = signal<string[]>(read());

function read(): string[] {
  return location.hash.replace(/^#\/?/, "").split("/").filter(Boolean).map(decodeURIComponent);
}

// An entry of the browser's history that was seen before comes back scrolled as it was left.
type Entry = { scroll: number } | null;
let entry = history.state as Entry;

addEventListener("hashchange", () => {
  entry = history.state as Entry;
  route.value = read();
});

/** How far down this place was when it was left; the top for a place come to anew. */
export const keptScroll = () => entry?.scroll ?? 0;

export function keepScroll(scroll: number) {
  history.replaceState({ scroll } satisfies Entry, "");
}

/** The address of a place. */
export function to(...parts: string[]): string {
  return "#/" + parts.map(encodeURIComponent).join("/");
}

/** Goes to a place. */
export function go(...parts: string[]) {
  location.hash = to(...parts);
}

/** Goes to a place that takes this one's turn: Back doesn't return here. */
export function turnTo(...parts: string[]) {
  location.replace(to(...parts));
}

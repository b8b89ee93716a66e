// Keeping the board as the server has it: it says when there is more, and the page asks what.
import { get } from "./ask";
import type { Board } from "../src/types";
import { board, drafts, live, place, signedOut, type Draft, type Live } from "./state";

/** How long to wait before a stream that the server ended is asked for anew, ms. */
const AGAIN = 3_000;
/** Some of a verdict depends on the day: the board is asked for anew though nothing came, ms. */
const ANEW = 5 * 60_000;

const be = (state: Live["state"]) => {
  if (live.value.state !== state) live.value = { state, since: new Date() };
};

/** Follows the server until the function given back is called. */
export function follow(): () => void {
  let source: EventSource | undefined;
  let retry: number | undefined;
  let over = false;
  const look = () => load().then(() => be("live"), () => be("lost"));
  const lost = () => {
    if (over) return;
    be("lost");
    source?.close();
    clearTimeout(retry);
    retry = window.setTimeout(open, AGAIN);
  };
  const open = () => {
    source = new EventSource("desk/events");
    source.addEventListener("board", look);
    source.addEventListener("signed-out", signedOut);
    // The browser would try again by itself, but not after every kind of end.
    source.addEventListener("error", () => void probe().finally(lost));
  };
  open();
  const clock = setInterval(() => live.value.state === "live" && void look(), ANEW);
  return () => {
    over = true;
    source?.close();
    clearTimeout(retry);
    clearInterval(clock);
    be("coming");
  };
}

async function load() {
  const [told, mine] = await Promise.all([get<Board>("board"), get<Draft[]>("drafts")]);
  // What is taken from a form that waits for the board must be there with it.
  drafts.value = mine;
  board.value = told;
}

/** Drafts alone, after one was prepared or taken back. */
export async function lookAtDrafts() {
  drafts.value = await get<Draft[]>("drafts");
}

/** Whether somebody is still signed in; a stream can't tell why it ended. */
async function probe() {
  if (place.value?.signed_in) await get("drafts").catch(() => undefined);
}

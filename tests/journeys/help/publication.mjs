// An invented engine that a school might publish: our invented 125, under another name.
import { readFileSync } from "node:fs";

const BRAMBLE = new URL("../../../shared/catalogue/engines/bramble-125.toml", import.meta.url);

/** Its data sheet; on wish with a value that is no number, and the line on which it stands. */
export function sheet({ faulty = false } = {}) {
  const good = readFileSync(BRAMBLE, "utf8").replace('"bramble-125"', '"wisp-80"').replace('"Bramble 125"', '"Wisp 80"');
  return faulty ? good.replace(/^value = \d+$/m, 'value = "four"') : good;
}

export const faultyLine = () => sheet({ faulty: true }).split("\n").indexOf('value = "four"') + 1;

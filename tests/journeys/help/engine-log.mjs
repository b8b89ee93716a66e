// Engine logs as an invented instrument writes them, one row a second: idle, a climb to the hottest, idle again.
import { PIN } from "./pilot.mjs";
import { day } from "./world.mjs";

const IDLE = 2000;
const FULL = 9000;

/** What the instrument shows so many seconds after starting, with the head at most so hot. */
function shows(second, peak) {
  const climbing = second >= 120 && second < 420;
  const warm = Math.min(1, second / 300);
  return { cht: second >= 320 && second < 400 ? peak : 60 + (peak - 80) * warm, speed: climbing ? FULL : IDLE };
}

/** A log in the person's way of writing: what stands between columns, what before decimals, how columns are headed. */
export function engineLog(peak, { separator = ";", decimal = ",", headings = ["Time", "CHT (°C)", "RPM"], outside = null } = {}) {
  const number = (value) => value.toFixed(1).replace(".", decimal);
  const heads = outside === null ? headings : [...headings, "OAT (°C)"];
  const rows = Array.from({ length: 600 }, (_, second) => {
    const { cht, speed } = shows(second, peak);
    return [String(second), number(cht), String(speed), ...(outside === null ? [] : [number(outside)])].join(separator);
  });
  return [heads.join(separator), ...rows, ""].join("\n");
}

export const asFile = (name, text, encoding = "utf8") => ({ name, mimeType: "text/csv", buffer: Buffer.from(text, encoding) });

/** Logs taken in one after the other, at so many engine hours each, on a day of 15 °C; behind the screens. */
export async function logged(pilot, machine, runs, { days = runs.length } = {}) {
  for (const [index, [hours, peak]] of runs.entries()) {
    const [name, text] = [`run-${index}.csv`, engineLog(peak, { outside: 15 })];
    const { mapping } = await pilot.ask("log-open", { machine, name, text });
    await pilot.ask("log-take", { machine, name, text, mapping, hours, on: day(index - days), outside: null, pin: PIN });
  }
}

/** Peaks that lie on a line: so many degrees more each hour. */
export const rising = (count, { from = 6, every = 3, first = 160, perHour = 0.5 } = {}) =>
  Array.from({ length: count }, (_, index) => [from + index * every, first + index * every * perHour]);

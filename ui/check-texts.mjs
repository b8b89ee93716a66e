// Every text the screens ask for exists in English, and no language carries a dead one or other variables.
// What another language lacks is said in English there: that is told, and a fault only with `--whole`.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { FluentResource } from "@fluent/bundle";

const here = import.meta.dirname;
const texts = join(here, "../shared/catalogue/texts");
const whole = process.argv.includes("--whole");
const ENGLISH = "en";

function sources(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sources(path) : /\.tsx?$/.test(path) ? [readFileSync(path, "utf8")] : [];
  });
}

/** The texts that code asks for by name, and the beginnings of those that it makes from a state's name. */
function askedBy(folder) {
  const code = sources(join(here, folder)).join("\n");
  const asked = [...code.matchAll(/\b(?:t|getMessage)\(\s*(?:"([a-z0-9-]+)"|[^"()][^()]*?\?\s*"([a-z0-9-]+)"\s*:\s*"([a-z0-9-]+)")/g)];
  return {
    keys: new Set(asked.flatMap(([, ...keys]) => keys.filter(Boolean))),
    // Keys made from a state's name are listed where they are made: t(`state-${…}`) has `state-`.
    stems: [...code.matchAll(/\bt\(\s*`([A-Za-z0-9-]+-)\$\{/g)].map((match) => match[1]),
  };
}

/** The variables of a message, at whatever depth. */
function variables(part) {
  if (typeof part !== "object" || part === null) return [];
  return [...(part.type === "var" ? [part.name] : []), ...Object.values(part).flatMap(variables)];
}

/** A language's messages by id, each with its variables; none where it lacks the file. */
function read(language, file) {
  const path = join(texts, language, file);
  if (!existsSync(path)) return new Map();
  return new Map(new FluentResource(readFileSync(path, "utf8")).body.map(({ id, value }) => [id, new Set(variables(value))]));
}

let faults = 0;
const say = (language, file, what, key) => (faults++, console.error(`texts/${language}/${file}: ${what} \`${key}\``));

const english = { "ui.ftl": read(ENGLISH, "ui.ftl"), "board.ftl": read(ENGLISH, "board.ftl") };
const inApp = askedBy("src");
const onBoard = askedBy("board");
for (const key of inApp.keys) if (!english["ui.ftl"].has(key)) say(ENGLISH, "ui.ftl", "no text for", key);
// The board uses parts of the app, and so their words.
for (const key of onBoard.keys) if (!english["board.ftl"].has(key) && !english["ui.ftl"].has(key)) say(ENGLISH, "board.ftl", "no text for", key);
for (const key of english["board.ftl"].keys()) if (english["ui.ftl"].has(key)) say(ENGLISH, "board.ftl", "ui.ftl says it too:", key);
for (const [file, { keys, stems }] of [["ui.ftl", inApp], ["board.ftl", onBoard]])
  for (const key of english[file].keys())
    if (!keys.has(key) && !stems.some((stem) => key.startsWith(stem))) say(ENGLISH, file, "no screen asks for", key);

for (const language of readdirSync(texts).filter((language) => language !== ENGLISH))
  for (const [file, there] of Object.entries(english)) {
    const own = read(language, file);
    const lacking = [...there.keys()].filter((key) => !own.has(key));
    if (whole) for (const key of lacking) say(language, file, "no text for", key);
    else if (lacking.length > 0) console.warn(`texts/${language}/${file}: ${lacking.length} texts are said in English there`);
    for (const [key, used] of own) {
      if (!there.has(key)) say(language, file, "no screen asks for", key);
      for (const name of used) if (there.has(key) && !there.get(key).has(name)) say(language, file, `English has no { $${name} } in`, key);
    }
  }
process.exitCode = faults ? 1 : 0;

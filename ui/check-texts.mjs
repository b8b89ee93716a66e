// Every text the screens ask for exists in every language, and no language carries a dead one.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { FluentResource } from "@fluent/bundle";

const here = import.meta.dirname;
const texts = join(here, "../shared/catalogue/texts");

function sources(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sources(path) : /\.tsx?$/.test(path) ? [readFileSync(path, "utf8")] : [];
  });
}

/** The texts that code asks for by name, and the beginnings of those that it makes from a state's name. */
function askedBy(folder) {
  const code = sources(join(here, folder)).join("\n");
  const asked = [...code.matchAll(/\bt\(\s*(?:"([a-z0-9-]+)"|[^"()][^()]*?\?\s*"([a-z0-9-]+)"\s*:\s*"([a-z0-9-]+)")/g)];
  return {
    keys: new Set(asked.flatMap(([, ...keys]) => keys.filter(Boolean))),
    // Keys made from a state's name are listed where they are made: t(`state-${…}`) has `state-`.
    stems: [...code.matchAll(/\bt\(\s*`([a-z0-9-]+-)\$\{/g)].map((match) => match[1]),
  };
}

let faults = 0;
for (const language of readdirSync(texts)) {
  const idsIn = (file) => new Set(new FluentResource(readFileSync(join(texts, language, file), "utf8")).body.map(({ id }) => id));
  const say = (file, what, key) => (faults++, console.error(`texts/${language}/${file}: ${what} \`${key}\``));
  const [app, board] = [idsIn("ui.ftl"), idsIn("board.ftl")];
  const inApp = askedBy("src");
  const onBoard = askedBy("board");
  for (const key of inApp.keys) if (!app.has(key)) say("ui.ftl", "no text for", key);
  // The board uses parts of the app, and so their words.
  for (const key of onBoard.keys) if (!board.has(key) && !app.has(key)) say("board.ftl", "no text for", key);
  for (const key of board) if (app.has(key)) say("board.ftl", "ui.ftl says it too:", key);
  for (const [file, there, { keys, stems }] of [["ui.ftl", app, inApp], ["board.ftl", board, onBoard]])
    for (const key of there)
      if (!keys.has(key) && !stems.some((stem) => key.startsWith(stem))) say(file, "no screen asks for", key);
}
process.exitCode = faults ? 1 : 0;

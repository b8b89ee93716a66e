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

const code = sources(join(here, "src")).join("\n");
const asked = new Set(
  [...code.matchAll(/\bt\(\s*(?:"([a-z0-9-]+)"|[^"()][^()]*?\?\s*"([a-z0-9-]+)"\s*:\s*"([a-z0-9-]+)")/g)].flatMap(
    ([, ...keys]) => keys.filter(Boolean),
  ),
);
// Keys made from a state's name are listed where they are made: t(`state-${…}`) has `state-`.
const stems = [...code.matchAll(/\bt\(\s*`([a-z0-9-]+-)\$\{/g)].map((match) => match[1]);

let faults = 0;
for (const language of readdirSync(texts)) {
  const resource = new FluentResource(readFileSync(join(texts, language, "ui.ftl"), "utf8"));
  const there = new Set(resource.body.map((entry) => entry.id));
  const say = (what, key) => (faults++, console.error(`texts/${language}/ui.ftl: ${what} \`${key}\``));
  for (const key of asked) if (!there.has(key)) say("no text for", key);
  for (const key of there)
    if (!asked.has(key) && !stems.some((stem) => key.startsWith(stem))) say("no screen asks for", key);
}
process.exitCode = faults ? 1 : 0;

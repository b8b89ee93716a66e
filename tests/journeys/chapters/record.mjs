// A record laid open, and the machine's records given away as a file that anyone can verify.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { MAKER } from "../help/picture.mjs";
import { PERSON } from "../help/pilot.mjs";

/** The record tells all that was seen, said and taken back, under a good signature. */
export async function laidOpen(pilot, { list, slipped }) {
  assert.equal(await pilot.of("signature").getAttribute("data-good"), "true");
  assert.equal(await pilot.page.locator('[data-test^="finding-"]').count(), list.length);
  const base = await pilot.says("finding-cylinder-base");
  assert.match(base, /to watch.*Old stain.*as wide as a thumb/s);
  assert.match(await pilot.says(`finding-${slipped}`), /Taken back/);
  assert.match(await pilot.says("finding-throttle-free-travel"), /0\.08 in.*band 1–3 mm/s);
  assert.match(await pilot.page.locator(".banner").innerText(), /6[01] min/);
  const digest = await pilot.of("digest").innerText();
  const payload = await pilot.of("payload").textContent();
  // The digest on the screen is that of the bytes on the screen (SHA-256 by Node's OpenSSL).
  assert.equal(createHash("sha256").update(payload).digest("hex"), digest.trim());
}

/** The picture: upright, smaller, named by its bytes, and without a word of where it was taken. */
export async function pictureIsClean(pilot, payload) {
  const finding = payload.body.findings.find(({ point }) => point === "cylinder-base");
  const [digest] = finding.photos;
  const { media, data } = await pilot.ask("photo", { digest });
  const bytes = Buffer.from(data, "base64");
  assert.equal(media, "image/jpeg");
  assert.equal(createHash("sha256").update(bytes).digest("hex"), digest);
  for (const trace of ["Exif", MAKER]) assert.ok(!bytes.includes(trace), `${trace} is gone`);
  const seen = await pilot.page.evaluate(async (source) => {
    const image = Object.assign(new Image(), { src: source });
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), { width: image.width, height: image.height });
    const pen = canvas.getContext("2d");
    pen.drawImage(image, 0, 0);
    const isRed = (x, y) => {
      const [red, green] = pen.getImageData(x * image.width, y * image.height, 1, 1).data;
      return red > 200 && green < 60;
    };
    return { width: image.width, height: image.height, corners: [isRed(0.1, 0.1), isRed(0.9, 0.1), isRed(0.1, 0.9)] };
  }, `data:${media};base64,${data}`);
  // Taken 2400 × 1200 lying on its side, its red corner at the upper left; upright that is the upper right.
  assert.deepEqual(seen, { width: 800, height: 1600, corners: [false, true, false] });
}

/** Exported on the screen, verified on the command line with nothing but the file. */
export async function givenAway(pilot, here) {
  const { name, bytes } = await pilot.download("export");
  const file = join(here.folder, name);
  writeFileSync(file, bytes);
  assert.match(await pilot.says("exported"), new RegExp(name));
  const verified = here.cli("verify", file);
  assert.equal(verified.code, 0, JSON.stringify(verified));
  return file;
}

/** The same file on the screen: good as it is; with a letter changed, the fault is named with its record. */
export async function checkedOnTheScreen(pilot, here, file) {
  await pilot.goTo("verify");
  await pilot.on("verify");
  await pilot.of("verify-file").setInputFiles(file);
  await pilot.page.locator('[data-test="verified"][data-good="true"]').waitFor();
  assert.match(await pilot.says("verified"), new RegExp(PERSON));

  const altered = join(here.folder, "altered.jsonl");
  writeFileSync(altered, alter(readFileSync(file, "utf8")));
  await pilot.of("verify-file").setInputFiles(altered);
  await pilot.page.locator('[data-test="verified"][data-good="false"]').waitFor();
  assert.match(await pilot.says("fault-bad-signature"), /[0-9a-f]{64}/);
  const said = here.cli("verify", altered);
  assert.equal(said.code, 1);
  assert.match(JSON.stringify(said.said), /bad-signature/);

  await pilot.type("verify-text", "no bundle at all");
  await pilot.tap("verify");
  await pilot.page.locator('[data-test="verified"][data-good="false"], [data-test="fault"]').first().waitFor();
  assert.equal(await pilot.of("verify-text").inputValue(), "no bundle at all");
}

/** The last record with its finding made milder, put back as if nobody had touched it. */
function alter(bundle) {
  const lines = bundle.trimEnd().split("\n");
  const last = JSON.parse(lines.at(-1));
  const payload = last.payload.replace('"means":"watch"', '"means":"serviceable"');
  assert.notEqual(payload, last.payload);
  lines[lines.length - 1] = JSON.stringify({ ...last, payload });
  return lines.join("\n") + "\n";
}

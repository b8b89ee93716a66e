// Our records in the hands of npm's jose, which knows nothing of us.
//   node records.mjs verify BUNDLE…   verifies bundles that we wrote, and refuses altered ones
//   node records.mjs sign BUNDLE      writes a bundle of its own, for us to verify
// Standards: RFC 7515 (JWS), RFC 7797 (unencoded payload), RFC 9864 (Ed25519), RFC 7638 (thumbprint).
import { readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { base64url } from "jose";
import { Author, digestOf, jsonLines } from "./author.mjs";
import { check, done } from "./tally.mjs";
import { keysOf, verifies } from "./verify.mjs";

function altered(line) {
  const flipped = (text, at) => text.slice(0, at) + (text[at] === "A" ? "B" : "A") + text.slice(at + 1);
  const header = JSON.parse(new TextDecoder().decode(base64url.decode(line.protected)));
  const { alg, ...nameless } = header;
  return {
    payload: { ...line, payload: line.payload.replace('"seq":', '"seq":1') },
    "payload with a space": { ...line, payload: `${line.payload} ` },
    signature: { ...line, signature: flipped(line.signature, 40) },
    header: { ...line, protected: flipped(line.protected, 60) },
    "header with b64 true": { ...line, protected: base64url.encode(JSON.stringify({ ...header, b64: true })) },
    [`header without alg (${alg})`]: { ...line, protected: base64url.encode(JSON.stringify(nameless)) },
  };
}

async function verify(file) {
  const name = basename(file);
  const lines = readFileSync(file, "utf8").trimEnd().split("\n").map((line) => JSON.parse(line));
  const keys = await keysOf(lines);
  check(`${name}: has records and keys`, lines.length > 3 && keys.size > 0, `${lines.length}, ${keys.size}`);
  const good = await Promise.all(lines.map((line) => verifies(line, keys)));
  const refused = good.filter((taken) => !taken).length;
  check(`${name}: jose verifies every line`, refused === 0, `${refused} of ${lines.length} refused`);
  const devices = lines.map((line) => JSON.parse(line.payload).device);
  check(`${name}: every device is a thumbprint of a key in the file`, devices.every((device) => keys.has(device)));
  const last = lines.at(-1);
  const other = [...keys].find(([device]) => device !== devices.at(-1));
  if (other) {
    check(`${name}: jose refuses another's key`, !(await verifies(last, new Map([[devices.at(-1), other[1]]]))));
  }
  for (const [what, line] of Object.entries(altered(last))) {
    check(`${name}: jose refuses an altered ${what}`, !(await verifies(line, keys)));
  }
}

async function sign(file) {
  const author = await Author.called("An invented pilot, written by JavaScript: äöü");
  await author.describes("01980000-0000-7000-8000-00000000cdef", "Written elsewhere");
  writeFileSync(file, jsonLines(author.lines));
}

const [verb, ...files] = process.argv.slice(2);
if (verb === "sign") {
  await sign(files[0]);
} else {
  for (const file of files) await verify(file);
  const line = JSON.parse(readFileSync(files[0], "utf8").split("\n")[0]);
  const keys = await keysOf([line]);
  check("jose takes the alg name Ed25519", await verifies(line, keys, ["Ed25519"]));
  check("jose does not take Ed25519 for EdDSA", !(await verifies(line, keys, ["EdDSA"])));
  done();
}

// Our records in the hands of npm's jose, which knows nothing of us.
//   node records.mjs verify BUNDLE…   verifies bundles that we wrote, and refuses altered ones
//   node records.mjs sign BUNDLE      writes a bundle of its own, for us to verify
// Standards: RFC 7515 (JWS), RFC 7797 (unencoded payload), RFC 9864 (Ed25519), RFC 7638 (thumbprint).
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import {
  FlattenedSign,
  base64url,
  calculateJwkThumbprint,
  errors,
  exportJWK,
  flattenedVerify,
  generateKeyPair,
  importJWK,
} from "jose";

let failed = 0;
function check(name, passed, why = "") {
  if (!passed) failed += 1;
  console.log(passed ? `ok ${name}` : `FAILED ${name}${why && `: ${why}`}`);
}

/** Every device's key, as its own member record states it, by the thumbprint reckoned here. */
async function keysOf(lines) {
  const keys = new Map();
  for (const line of lines) {
    const payload = JSON.parse(line.payload);
    if (payload.kind !== "member") continue;
    const { key } = payload.body;
    keys.set(await calculateJwkThumbprint(key, "sha256"), await importJWK(key, "Ed25519"));
  }
  return keys;
}

/** Whether jose takes the line, under the key that its header names. */
async function verifies(line, keys, algorithms = ["Ed25519"]) {
  try {
    const resolve = (header) => {
      const key = keys.get(header.kid);
      if (!key) throw new errors.JWKSNoMatchingKey();
      return key;
    };
    const { payload } = await flattenedVerify(line, resolve, { algorithms });
    return new TextDecoder().decode(payload) === line.payload;
  } catch (fault) {
    if (fault instanceof errors.JOSEError) return false;
    throw fault;
  }
}

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

/** RFC 8785 for what we write here: members sorted, no white space, numbers and strings as ECMAScript has them. */
function canonical(value) {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  const members = Object.keys(value).sort();
  return `{${members.map((name) => `${JSON.stringify(name)}:${canonical(value[name])}`).join(",")}}`;
}

async function sign(file) {
  const { publicKey, privateKey } = await generateKeyPair("Ed25519", { extractable: true });
  const { crv, kty, x } = await exportJWK(publicKey);
  const device = await calculateJwkThumbprint({ crv, kty, x }, "sha256");
  const member = {
    person: "01980000-0000-7000-8000-000000000002",
    name: "An invented pilot, written by JavaScript: äöü",
    key: { crv, kty, x },
    invented: true,
  };
  const described = { name: "Written elsewhere", engine: "bramble-125", fitted: {}, hours: 12.5, flights: 3, invented: true };
  const facts = [
    { kind: "member", body: member },
    { kind: "machine", body: described, machine: "01980000-0000-7000-8000-00000000cdef" },
  ];
  let text = "";
  let before;
  for (const [index, fact] of facts.entries()) {
    const seq = index + 1;
    const payload = canonical({
      v: 1,
      ...fact,
      id: `01980000-0000-7000-8000-0000000001${String(seq).padStart(2, "0")}`,
      device,
      seq,
      of_seq: 1,
      ...(before && { prev: before }),
      seen: {},
      at: "2026-05-02T06:41:07+02:00",
      clock: { ms: 1777696867000 + seq, n: 0 },
    });
    before = createHash("sha256").update(payload).digest("hex");
    const signed = await new FlattenedSign(new TextEncoder().encode(payload))
      .setProtectedHeader({ alg: "Ed25519", b64: false, crit: ["b64"], kid: device })
      .sign(privateKey);
    // With an unencoded payload the library leaves its place empty; RFC 7797 § 4.2 lets it stand there as it is.
    text += `${JSON.stringify({ ...signed, payload })}\n`;
  }
  writeFileSync(file, text);
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
  process.exit(failed ? 1 : 0);
}

// A school's server in the hands of a second client that isn't ours: fetch, npm's http-message-sig (RFC 9421)
// and jose. Started by school.py, which tells where server and root are.
//   school.py WITNESSMARK node client.mjs
import { execFileSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import { appendSignature, createSignature, webcrypto } from "http-message-sig";
import { Author, digestOf, jsonLines, newKey, sha256 } from "./author.mjs";
import { consistent, included, opened, rootOf } from "./proofs.mjs";
import { keysOf, verifies } from "./verify.mjs";
import { check, done } from "./tally.mjs";

const { SCHOOL_SERVER, SCHOOL_PROGRAM, SCHOOL_DATA, SCHOOL_PIN_FILE } = process.env;
const COVERED = ["@method", "@authority", "@path", "@query"];
const MACHINE = "01980000-0000-7000-8000-00000000face";

/** Our program, which is the school's root: what it says, as JSON. */
function root(...args) {
  const told = execFileSync(SCHOOL_PROGRAM, ["--data", SCHOOL_DATA, "--json", ...args], { encoding: "utf8" });
  return JSON.parse(told);
}
const signedByRoot = (...args) => root(...args, "--pin-file", SCHOOL_PIN_FILE);

function admit(name, role) {
  const { code } = root("school", "waiting").find((one) => one.name === name);
  signedByRoot("school", "admit", "--waiting", code, "--role", role);
}

/** A request as signed; `given` stands in place of the usual parameters. */
async function signed(key, method, path, { body, headers, ...given } = {}) {
  const digest = body && createHash("sha256").update(body).digest("base64");
  const own = { ...headers, ...(digest && { "content-digest": `sha-256=:${digest}:` }) };
  const request = new Request(SCHOOL_SERVER + path, { method, headers: own, body });
  const fields = await createSignature(request, {
    label: "sig1",
    components: digest ? [...COVERED, "content-digest"] : COVERED,
    parameters: {
      created: Math.floor(Date.now() / 1000),
      nonce: randomBytes(16).toString("base64url"),
      keyid: key.id,
      alg: "ed25519",
      tag: "witnessmark",
      ...given,
    },
    signer: webcrypto.signer(key.privateKey),
  });
  return [request.url, { method, headers: Object.fromEntries(appendSignature(request.headers, fields)), body }];
}

const ask = async (...how) => fetch(...(await signed(...how)));
const told = async (answer) => (answer.ok ? `${answer.status}` : `${answer.status} ${(await answer.json()).kind}`);
const open = (path, init) => fetch(SCHOOL_SERVER + path, init);

async function joining(pilot) {
  const card = await (await open("/v1/school")).json();
  const keys = await keysOf(card.records);
  const good = await Promise.all(card.records.map((line) => verifies(line, keys)));
  check("jose verifies the card's records", good.length >= 2 && good.every(Boolean));
  check("the card's school is the digest of one of them", card.records.some((line) => digestOf(line) === card.school));
  await pilot.joins(card.school);
  const introduce = () => open("/v1/waiting", { method: "POST", body: jsonLines(pilot.lines) });
  check("node's device may wait", (await introduce()).status === 202);
  check("who waits is shown nothing", (await told(await ask(pilot.courier, "GET", "/v1/log?from=0"))) === "401 unknown-key");
  admit("Node pilot", "mechanic");
  check("who was admitted is let in", (await introduce()).status === 200);
  return card;
}

async function push(pilot, lines) {
  return (await ask(pilot.courier, "POST", "/v1/records", { body: jsonLines(lines) })).json();
}

async function sending(pilot) {
  const lines = [];
  for (let n = 0; n < 90; n += 1) lines.push(await pilot.describes(MACHINE, `Invented machine ${n}`));
  const altered = { ...lines[3], payload: lines[3].payload.replace("machine 3", "machine 4") };
  const { taken, refused } = await push(pilot, [altered, ...lines]);
  check("every record is taken, in order", taken.map((one) => one.digest).join() === lines.map(digestOf).join());
  check("an altered one is refused, and no other", refused.map((one) => `${one.line} ${one.kind}`).join() === "1 bad-signature");
  const again = await push(pilot, lines);
  check("sent again, they are where they are", JSON.stringify(again.taken) === JSON.stringify(taken));
}

async function following(pilot, card) {
  const note = await (await open("/v1/checkpoint")).text();
  const { size, root: head } = opened(note, card.server) ?? {};
  check("node:crypto verifies the checkpoint", size > 90);
  check("node:crypto refuses it altered", opened(note.replace("\n\n", "\nmore\n\n"), card.server) === undefined);
  const log = [];
  for (let page = [0]; page.length > 0; log.push(...page)) {
    const text = await (await ask(pilot.courier, "GET", `/v1/log?from=${log.length}&own=whole`)).text();
    page = text.split("\n").filter(Boolean).map((line) => JSON.parse(line));
  }
  const leaves = log.map(digestOf);
  check("the root reckoned from every leaf is the checkpoint's", leaves.length === size && rootOf(leaves).equals(head));
  const keys = await keysOf(log);
  const good = await Promise.all(log.map((line) => verifies(line, keys)));
  check("jose verifies every record of the log", good.every(Boolean));
  const proof = async (path) => (await ask(pilot.courier, "GET", `/v1/proof/${path}`)).json();
  for (const at of [0, 1, 63, 64, size - 1]) {
    const { index, path } = await proof(`inclusion?digest=${leaves[at]}&size=${size}`);
    const bent = [...path.slice(0, -1), leaves[0]];
    const proven = index === at && included(leaves[at], at, size, path, head);
    check(`record ${at} is proven to be in the log`, proven && !included(leaves[at], at, size, bent, head));
  }
  for (const first of [1, 3, 64, 65, size - 1]) {
    const { path } = await proof(`consistency?from=${first}&to=${size}`);
    const proven = consistent(first, size, path, rootOf(leaves.slice(0, first)), head);
    const bent = consistent(first, size, path, rootOf(leaves.slice(1, first + 1)), head);
    check(`the log of ${first} records is proven to be its beginning`, proven && !bent);
  }
}

async function pictures(pilot) {
  const photo = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff]), randomBytes(150_000)]);
  const path = `/v1/photo/${sha256(photo)}`;
  const put = (first, end) => {
    const range = `bytes ${first}-${end - 1}/${photo.length}`;
    const headers = { "content-type": "image/jpeg", "content-range": range };
    return ask(pilot.courier, "PUT", path, { body: photo.subarray(first, end), headers });
  };
  check("a first part is taken", (await put(0, 100_000)).status === 202);
  const head = await ask(pilot.courier, "HEAD", path);
  check("how much has come is told", head.status === 206 && head.headers.get("content-length") === "100000");
  check("the last part makes it whole", (await put(100_000, photo.length)).status === 201);
  const parts = [];
  for (const range of ["0-99999", "100000-"]) {
    const answer = await ask(pilot.courier, "GET", path, { headers: { range: `bytes=${range}` } });
    parts.push(Buffer.from(await answer.arrayBuffer()));
  }
  check("by ranges it comes back as it was", Buffer.concat(parts).equals(photo));
}

async function refusing(pilot) {
  const get = (given) => signed(pilot.courier, "GET", "/v1/log?from=0", given);
  const late = await get({ created: Math.floor(Date.now() / 1000) - 310 });
  check("a late request is refused", (await told(await fetch(...late))) === "401 clock");
  const once = await get();
  const twice = [await told(await fetch(...once)), await told(await fetch(...once))];
  check("a request that comes again is refused", twice.join() === "200,401 replayed", twice.join());
  const [url, how] = await get();
  check("one signed for another query is forged", (await told(await fetch(url.replace("=0", "=1"), how))) === "401 forged");
  check("one without a signature is refused", (await told(await fetch(url))) === "401 unsigned");
  const [where, post] = await signed(pilot.courier, "POST", "/v1/records", { body: jsonLines(pilot.lines) });
  const altered = await fetch(where, { ...post, body: jsonLines(pilot.lines.slice(1)) });
  check("one with another body is refused", (await told(altered)) === "401 altered");
  const thief = { ...(await newKey()), id: pilot.courier.id };
  check("one by another's hand is forged", (await told(await ask(thief, "GET", "/v1/log?from=0"))) === "401 forged");
}

async function ending(pilot) {
  root("sync");
  signedByRoot("school", "revoke", "Node pilot", "--why", "lost");
  root("sync");
  const answer = await told(await ask(pilot.courier, "GET", "/v1/log?from=0"));
  check("a lost device is heard no more", /^40[13] /.test(answer), answer);
}

const pilot = await Author.called("Node pilot");
const card = await joining(pilot);
await sending(pilot);
await following(pilot, card);
await pictures(pilot);
await refusing(pilot);
await ending(pilot);
done();

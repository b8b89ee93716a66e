// What a server's word about its log proves, reckoned with node:crypto alone.
// Standards: RFC 9162 §§ 2.1.1, 2.1.3.2, 2.1.4.2 (the tree of RFC 6962); C2SP signed-note, tlog-checkpoint.
import { createHash, createPublicKey, verify } from "node:crypto";

const sha = (...parts) => {
  const hash = createHash("sha256");
  parts.forEach((part) => hash.update(part));
  return hash.digest();
};
const node = (left, right) => sha(Buffer.of(1), left, right);
const leafHash = (leaf) => sha(Buffer.of(0), Buffer.from(leaf, "hex"));

/** RFC 9162 § 2.1.1: the root of these leaves. */
export function rootOf(leaves) {
  if (leaves.length === 0) return sha();
  if (leaves.length === 1) return leafHash(leaves[0]);
  const half = 2 ** (31 - Math.clz32(leaves.length - 1));
  return node(rootOf(leaves.slice(0, half)), rootOf(leaves.slice(half)));
}

/** RFC 9162 § 2.1.3.2. */
export function included(leaf, index, size, path, root) {
  let [at, last, reckoned] = [index, size - 1, leafHash(leaf)];
  if (index >= size) return false;
  for (const step of path.map((hex) => Buffer.from(hex, "hex"))) {
    if (last === 0) return false;
    if (at & 1 || at === last) {
      reckoned = node(step, reckoned);
      while (!(at & 1) && at) [at, last] = [at >> 1, last >> 1];
    } else {
      reckoned = node(reckoned, step);
    }
    [at, last] = [at >> 1, last >> 1];
  }
  return last === 0 && reckoned.equals(root);
}

/** RFC 9162 § 2.1.4.2, for 0 < first < second. */
export function consistent(first, second, path, firstRoot, secondRoot) {
  const steps = path.map((hex) => Buffer.from(hex, "hex"));
  if ((first & (first - 1)) === 0) steps.unshift(firstRoot);
  if (steps.length === 0) return false;
  let [at, last] = [first - 1, second - 1];
  while (at & 1) [at, last] = [at >> 1, last >> 1];
  let [older, newer] = [steps[0], steps[0]];
  for (const step of steps.slice(1)) {
    if (last === 0) return false;
    if (at & 1 || at === last) {
      [older, newer] = [node(step, older), node(step, newer)];
      while (!(at & 1) && at) [at, last] = [at >> 1, last >> 1];
    } else {
      newer = node(newer, step);
    }
    [at, last] = [at >> 1, last >> 1];
  }
  return last === 0 && older.equals(firstRoot) && newer.equals(secondRoot);
}

/** Origin, size and root of a checkpoint; undefined where the key hasn't signed it. */
export function opened(note, verifier) {
  const [name, id, ...rest] = verifier.split("+");
  const key = Buffer.from(rest.join("+"), "base64");
  const reckoned = sha(`${name}\n`, key).subarray(0, 4);
  const cut = note.lastIndexOf("\n\n") + 1;
  const text = note.slice(0, cut);
  const signed = note.slice(cut + 1).split("\n").find((line) => line.startsWith(`— ${name} `));
  const signature = Buffer.from(signed?.split(" ")[2] ?? "", "base64");
  if (id !== reckoned.toString("hex") || key[0] !== 1 || !signature.subarray(0, 4).equals(reckoned)) return undefined;
  const jwk = { kty: "OKP", crv: "Ed25519", x: key.subarray(1).toString("base64url") };
  const good = verify(null, Buffer.from(text), createPublicKey({ key: jwk, format: "jwk" }), signature.subarray(4));
  const [origin, size, root] = text.split("\n");
  return good && origin === name ? { origin, size: Number(size), root: Buffer.from(root, "base64") } : undefined;
}

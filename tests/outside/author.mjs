// A device that isn't ours: npm's jose signs its records, npm's canonicalize writes them.
// Standards: RFC 7515 (JWS), RFC 7797 (unencoded payload), RFC 9864 (Ed25519), RFC 7638 (thumbprint),
// RFC 8785 (canonical JSON), RFC 9562 (UUID version 7).
import { createHash, randomBytes } from "node:crypto";
import canonicalize from "canonicalize";
import { FlattenedSign, calculateJwkThumbprint, exportJWK, generateKeyPair } from "jose";

export const sha256 = (bytes) => createHash("sha256").update(bytes).digest("hex");
/** A record's name. */
export const digestOf = (line) => sha256(line.payload);
export const jsonLines = (lines) => lines.map((line) => `${JSON.stringify(line)}\n`).join("");

function uuid7() {
  const bytes = randomBytes(16);
  bytes.writeUIntBE(Date.now(), 0, 6);
  bytes[6] = (bytes[6] & 0x0f) | 0x70;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  return bytes.toString("hex").replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
}

/** A key pair, its public half as RFC 8037 § 2 has it and no more, and its name. */
export async function newKey() {
  const { publicKey, privateKey } = await generateKeyPair("Ed25519", { extractable: true });
  const { crv, kty, x } = await exportJWK(publicKey);
  return { privateKey, jwk: { crv, kty, x }, id: await calculateJwkThumbprint({ crv, kty, x }, "sha256") };
}

/** A device and all that it has signed. Its first record states its key. */
export class Author {
  lines = [];
  /** Count and last digest of the records about each machine, and about none (""). */
  #of = new Map();

  static async called(name) {
    const author = new Author();
    author.key = await newKey();
    author.courier = await newKey();
    author.device = author.key.id;
    await author.write("member", { person: uuid7(), name, key: author.key.jwk, invented: true });
    return author;
  }

  /** Signs a fact; the envelope. */
  async write(kind, body, machine = "") {
    const [count, before] = this.#of.get(machine) ?? [0];
    const seq = this.lines.length + 1;
    const payload = canonicalize({
      v: 1,
      kind,
      id: uuid7(),
      ...(machine && { machine }),
      device: this.device,
      seq,
      ...(seq > 1 && { prev: digestOf(this.lines.at(-1)) }),
      of_seq: count + 1,
      ...(before && { of_prev: before }),
      seen: {},
      at: new Date().toISOString(),
      clock: { ms: Date.now(), n: seq },
      body,
    });
    const signed = await new FlattenedSign(new TextEncoder().encode(payload))
      .setProtectedHeader({ alg: "Ed25519", b64: false, crit: ["b64"], kid: this.device })
      .sign(this.key.privateKey);
    // With an unencoded payload the library leaves its place empty; RFC 7797 § 4.2 lets it stand there as it is.
    const line = { ...signed, payload };
    this.lines.push(line);
    this.#of.set(machine, [count + 1, digestOf(line)]);
    return line;
  }

  joins(school) {
    return this.write("school-joined", { school, courier: this.courier.jwk });
  }

  describes(machine, name) {
    const fitted = { reserve: "" };
    return this.write("machine", { name, engine: "bramble-125", fitted, hours: 12.5, flights: 3, invented: true }, machine);
  }
}

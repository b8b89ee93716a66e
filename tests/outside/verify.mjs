// Whether records are good, by npm's jose.
import { calculateJwkThumbprint, errors, flattenedVerify, importJWK } from "jose";

/** Every device's key, as its own member record states it, by the thumbprint reckoned here. */
export async function keysOf(lines) {
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
export async function verifies(line, keys, algorithms = ["Ed25519"]) {
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

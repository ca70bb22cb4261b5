import { randomBytes } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";

/** Argon2id is the package's default; the numbers are OWASP's minimum for it (Password Storage Cheat Sheet, from memory). */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

let nobodys: Promise<string> | undefined;

export function hashPassword(password: string): Promise<string> {
  return hash(password, COST);
}

/**
 * Whether this is the account's password.
 *
 * @param kept the account's hash; undefined where there is no account: then a random hash is checked, so that the answer takes equally long.
 */
export async function isPassword(kept: string | undefined, password: string): Promise<boolean> {
  nobodys ??= hashPassword(randomBytes(32).toString("hex"));
  const matches = await verify(kept ?? (await nobodys), password);
  return matches && kept !== undefined;
}

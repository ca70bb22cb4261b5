import "server-only";
import { createHash, randomBytes } from "node:crypto";

const TOKEN_BYTES = 32;

/** A new secret for an address. */
export function makeToken(): string {
  return randomBytes(TOKEN_BYTES).toString("base64url");
}

/** The stored hash of a token: as hard to guess from as the token itself. */
export function hashToken(token: string): string {
  return createHash("sha256").update(token).digest("hex");
}

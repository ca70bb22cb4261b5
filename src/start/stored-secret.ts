import { randomBytes } from "node:crypto";
import { linkSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { hasCode } from "./start-error";

/**
 * The secret in a file that only its owner can read, made at first use.
 * Written beside and linked into place, so that two starts at once agree on one secret.
 */
export function storedSecret(file: string): string {
  try {
    return readFileSync(file, "utf8").trim();
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
  }
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, `${randomBytes(32).toString("hex")}\n`, { mode: 0o600 });
  try {
    linkSync(beside, file);
  } catch (error) {
    if (!hasCode(error, "EEXIST")) throw error;
  } finally {
    rmSync(beside);
  }
  return readFileSync(file, "utf8").trim();
}

import "server-only";
import { createHash } from "node:crypto";

/**
 * Idempotency key of a form: the same form with the same content has the same key, with different content a different one.
 *
 * @param formKey made once for the form.
 * @param content what is sent, as text.
 * @returns a UUID (version 8: ours to fill).
 */
export function idempotencyKey(formKey: string, content: string): string {
  const hex = createHash("sha256").update(`${formKey} ${content}`).digest("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `8${hex.slice(17, 20)}`, hex.slice(20, 32)].join(
    "-",
  );
}

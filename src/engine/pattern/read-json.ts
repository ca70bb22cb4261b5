import type { Fault } from "./faults";

/**
 * Value of a JSON text.
 *
 * @param text JSON, with or without a byte order mark.
 * @returns the value, or one fault of the whole that says the text is not JSON.
 */
export function readJson(text: string): { ok: true; value: unknown } | { ok: false; faults: readonly Fault[] } {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ""));
    return { ok: true, value };
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof RangeError)) throw error;
    return { ok: false, faults: [{ path: "$", says: `is not JSON: ${error.message}` }] };
  }
}

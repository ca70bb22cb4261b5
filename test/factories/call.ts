import { CALL_FORMAT, type CallDocument, type Reading, type Tester } from "@/engine/pattern";
import { patternDocument, tester } from "./pattern";

/** A call of the test pattern; two places a size. */
export function callDocument(testers: readonly Tester[], change: Partial<CallDocument> = {}): CallDocument {
  const places = { small: { least: 1, wanted: 2 }, large: { least: 1, wanted: 2 } };
  return { format: CALL_FORMAT, pattern: patternDocument(), places, testers, ...change };
}

/** A tester on gauge who read these centimetres; by design bust is 100 (S) or 120 (L), length 40 or 44. */
export function reader(id: string, readings: Readonly<Record<string, number>>, change: Partial<Tester> = {}): Tester {
  const list: Reading[] = Object.entries(readings).map(([measurement, cm]) => ({ measurement, cm }));
  return tester({ id, readings: list, ...change });
}

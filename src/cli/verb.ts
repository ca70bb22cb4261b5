import type { Fault } from "@/engine/pattern";

/** Result of a verb: something to print, or the faults of the input. */
type VerbResult =
  /** With `hasNoAnswer` if there is no solution; the output then says why. */
  | { readonly ok: true; readonly output: unknown; readonly hasNoAnswer?: boolean }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** One verb of the headless engine. */
export interface Verb {
  readonly name: string;
  /** What it takes and prints, in a line. */
  readonly summary: string;
  readonly run: (value: unknown) => VerbResult | Promise<VerbResult>;
}

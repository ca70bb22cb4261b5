import type { Fault } from "@/engine/pattern";

/** What a verb made of its input: something to print, or what is wrong with the input. */
export type VerbResult =
  /** `hasNoAnswer` where what is printed says why there is none. */
  | { readonly ok: true; readonly output: unknown; readonly hasNoAnswer?: boolean }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** One verb of the headless engine. */
export interface Verb {
  readonly name: string;
  /** What it takes and prints, in a line. */
  readonly summary: string;
  readonly run: (value: unknown) => VerbResult | Promise<VerbResult>;
}

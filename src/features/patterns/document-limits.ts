import type { Fault } from "@/engine/pattern";

/** The largest document that is taken in, bytes. */
export const LARGEST_DOCUMENT_BYTES = 20 * 1_000_000;

/** What became of a document that was brought in. */
export type BroughtIn =
  | { readonly status: "stored"; readonly href: string; readonly warnings: readonly Fault[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] }
  | { readonly status: "title"; readonly says: string };

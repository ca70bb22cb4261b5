/**
 * How far a published figure can be trusted: `read` in the document or in agreeing copies of it, `secondary` told by
 * somebody who works by it, `memory` recalled and seen in no document.
 */
export type Mark = "read" | "secondary" | "memory";

export interface Provenance {
  readonly source: string;
  readonly mark: Mark;
}

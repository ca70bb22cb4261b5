import type { Tester } from "../pattern";
import type { TableFault } from "./cells";

/** One tester of a table: the report as a document, the name if given, and the typed texts by document path. */
export interface ReadTester {
  readonly row: number;
  readonly name: string | null;
  readonly tester: Tester;
  /** `readings[0].cm` → `12 3/8 in`, where the document's number is not what was typed. */
  readonly typed: Readonly<Record<string, string>>;
}

export type ReportTable =
  | {
      readonly ok: true;
      readonly testers: readonly ReadTester[];
      /** Questions that the designer has to confirm. */
      readonly questions: readonly TableFault[];
      /** Assumptions that were made and entries that were skipped, in sentences. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly TableFault[] };

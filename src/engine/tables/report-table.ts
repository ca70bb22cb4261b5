import type { Tester } from "../pattern";
import type { TableFault } from "./cells";

/** One tester of a table: the report as a document, the name if given, and the typed texts by document path. */
export interface ReadTester {
  readonly row: number;
  readonly name: string | null;
  /** What they say in words, for the designer; "" for nothing. */
  readonly comment: string;
  readonly tester: Tester;
  /** `readings[0].cm` → `12 3/8 in`, where the document's number is not what was typed. */
  readonly typed: Readonly<Record<string, string>>;
}

/** How much of a table is read, beside how much there is. */
export interface ReportSum {
  /** Measurements of the pattern that a column holds. */
  readonly measurements: number;
  readonly ofMeasurements: number;
  readonly testers: number;
  readonly ofTesters: number;
  /** Answered cells of those columns. */
  readonly readings: number;
  readonly ofReadings: number;
}

export type ReportTable =
  | {
      readonly ok: true;
      readonly testers: readonly ReadTester[];
      readonly sum: ReportSum;
      /** Cells that cannot be read, where they are to be left out. */
      readonly leftOut: readonly TableFault[];
      /** Questions that the designer has to confirm. */
      readonly questions: readonly TableFault[];
      /** Assumptions that were made and entries that were skipped, in sentences. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly TableFault[]; readonly sum: ReportSum | null };

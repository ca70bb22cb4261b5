import type { Tester } from "../pattern";
import type { TableFault } from "./cells";

/** One tester of a table: her report as a document, her name where one was given, and what was typed by document path. */
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
      /** Asked back: right only if she says so. */
      readonly questions: readonly TableFault[];
      /** What was taken for granted or passed over, in sentences. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly TableFault[] };

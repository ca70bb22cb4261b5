import type { PatternDocument, Tester } from "../pattern";
import type { FormatLength } from "../sanity";
import type { LengthUnit } from "../units";
import type { EntryError } from "../gaps";

/** What a report is read against. */
export interface ReportContext {
  /** The revision that the tester followed, parsed. */
  readonly pattern: PatternDocument;
  /** Id of the size that the tester makes. */
  readonly size: string;
  /** Unit of a length without one; yards and metres of yarn go with it. */
  readonly unit: LengthUnit;
  /** Writes a length in the reader's unit, for messages. */
  readonly formatLength: FormatLength;
}

/** A report as documents store it, without what is stored in rows of its own. */
export type Report = Omit<Tester, "id" | "body">;

/** A message about a field of the report. */
export interface FieldMessage {
  readonly field: string;
  readonly message: string;
}

/** The result of reading a typed report. */
export interface ReadReport {
  /** All that could be read; items with a fault are left out, counts and lengths are all written out. */
  readonly report: Report;
  /**
   * Texts to store with the report, by path in it (`readings[2].cm`), where they are not the document's own number. A length
   * carries its unit; the width of a girth ends in `, laid flat`. What documents have no field for (`readings[2].kept`,
   * `yarn[0].before`) stands here too.
   */
  readonly typed: Readonly<Record<string, string>>;
  /** Keys of the fields that the report's items were read from, in the order of the items. */
  readonly keys: {
    readonly swatches: readonly string[];
    readonly readings: readonly string[];
    readonly yarn: readonly string[];
  };
  readonly faults: readonly FieldMessage[];
  readonly remarks: readonly FieldMessage[];
}

/** A question about an implausible entry. It does not prevent sending. */
export interface ReadingQuestion extends FieldMessage {
  /** Field of the answer: `yes`, meaning that the entry is correct, removes the question; null where only a new text answers it. */
  readonly keptField: string | null;
  /**
   * The entry error it looks like, null where none is likely. Only asked at entry: `four-inches`, a gauge over 4 in called 10 cm;
   * `us-size`, the US number of a needle or hook; `swapped-digits`,
   * the pattern's count with two digits the wrong way round; `one-ball`, the weight of one ball instead of all; `cm-and-flat`, a girth
   * laid flat in centimetres by a tester who works in inches.
   */
  readonly slip: EntryError | "four-inches" | "us-size" | "swapped-digits" | "one-ball" | "cm-and-flat" | null;
}

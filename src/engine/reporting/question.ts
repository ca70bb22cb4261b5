import type { EntryError } from "../gaps";
import type { FieldMessage } from "./report-context";

/** A question about an implausible entry. It does not prevent sending. */
export interface ReadingQuestion extends FieldMessage {
  /** Field of the answer: `yes`, meaning that the entry is correct, removes the question; null where only a new text answers it. */
  readonly keptField: string | null;
  /**
   * The entry error it looks like, null where none is likely. Only asked at entry: `four-inches`, a gauge over 4 in called 10 cm;
   * `us-size`, the US number of a needle or hook; `one-ball`, the weight of one ball instead of all; `cm-and-flat`, a girth
   * laid flat in centimetres by a tester who works in inches.
   */
  readonly slip: EntryError | "four-inches" | "us-size" | "one-ball" | "cm-and-flat" | null;
}

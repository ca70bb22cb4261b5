import type { EntryError } from "../gaps";
import type { FieldMessage } from "./report-context";

/** Something hard to believe, asked at entry. It keeps nobody from sending. */
export interface ReadingQuestion extends FieldMessage {
  /** Where her answer goes: `yes` there, that it is right, silences the question. */
  readonly keptField: string;
  /** The slip it looks like; `four-inches`: a gauge over 4 in called 10 cm; null where none is likely. */
  readonly slip: EntryError | "four-inches" | null;
}

import { CALL_FORMAT, CALL_FORMAT_2, type CallDocument, type Tester } from "./call-document";
import { usedCm } from "./used-values";

/** The oldest format that holds these reports, so that whoever reads only that one can go on reading them. */
export function callFormatOf(testers: readonly Tester[]): CallDocument["format"] {
  const isUsed = testers.some(({ readings }) => readings.some(({ decision }) => usedCm(decision) !== null));
  return isUsed ? CALL_FORMAT_2 : CALL_FORMAT;
}

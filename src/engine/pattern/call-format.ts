import { CALL_FORMAT, CALL_FORMAT_2, type CallDocument, type Tester } from "./call-document";
import { usedCm } from "./used-values";

/** The oldest format that holds these reports, so that whoever reads only that one can go on reading them. */
export function callFormatOf(testers: readonly Tester[]): CallDocument["format"] {
  return testers.some((tester) => usesValue(tester) || saysHow(tester)) ? CALL_FORMAT_2 : CALL_FORMAT;
}

function usesValue({ readings }: Tester): boolean {
  return readings.some(({ decision }) => usedCm(decision) !== null);
}

function saysHow({ sizesShown, confirmedCounts, blocking, prefers, swatches, yarn }: Tester): boolean {
  return (
    [sizesShown, confirmedCounts, blocking, prefers].some((said) => said !== undefined) ||
    swatches.some(({ blocking: how, before }) => how !== undefined || before !== undefined) ||
    yarn.some(({ label, strands }) => label !== undefined || strands !== undefined)
  );
}

import type { Carrier } from "../gaps-output";
import type { PatternDocument } from "../../pattern";
import type { TesterPlace } from "../model/tester-places";

/**
 * The tester, or where one suffices the single reading, without which something no longer stands.
 *
 * @param stands whether it still does without row `row` of the tester's readings, or without all of them where null.
 */
export function carrierOf(
  { measurements }: PatternDocument,
  { gaps }: TesterPlace,
  stands: (row: number | null) => boolean,
): Carrier[] {
  if (stands(null)) return [];
  const row = gaps.gaps.findIndex((_, index) => !stands(index));
  const measurement = measurements[gaps.gaps[row]?.measurement ?? -1];
  return [{ tester: gaps.tester.id, measurement: measurement?.id ?? null }];
}

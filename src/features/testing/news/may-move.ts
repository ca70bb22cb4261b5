import type { ReportInHand } from "../report/data";
import { holdsSwatchAlone } from "../report/holds-swatch-alone";

/**
 * A tester may move to a newer revision until they have sent something about their garment: that was made by the revision
 * they had. A swatch is made before it.
 */
export function mayMove({ sent }: Pick<ReportInHand, "sent">): boolean {
  return holdsSwatchAlone(sent?.typed ?? {});
}

import { stepOf } from "@/engine/reporting";
import type { ReportInHand } from "../report/data";

/**
 * A tester may move to a newer revision until they have sent something about their garment: that was made by the revision
 * they had. A swatch is made before it.
 */
export function mayMove({ sent }: Pick<ReportInHand, "sent">): boolean {
  const told = Object.entries(sent?.typed ?? {}).filter(([, text]) => text.trim() !== "");
  return told.every(([field]) => stepOf(field).includes("swatch"));
}

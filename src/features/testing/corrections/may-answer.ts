import type { ReportInHand } from "../report/data";
import { hasReportedAll } from "../report/has-reported-all";

/** A tester answers corrections until all of their report is sent; whoever has finished is told, and asked nothing. */
export function mayAnswer(inHand: Pick<ReportInHand, "ended" | "sent" | "context">): boolean {
  return inHand.ended === null && !hasReportedAll(inHand);
}

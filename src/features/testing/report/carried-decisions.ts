import { canonicalJson } from "@/engine/pattern";
import type { ReportDecision, StoredReport } from "@/features/calls/report-schema";

/** Decisions on items that the next version of a report holds unchanged, with their positions there. */
export function carriedDecisions<Decided extends Pick<ReportDecision, "part" | "position">>(
  decisions: readonly Decided[],
  { from, to }: { readonly from: StoredReport; readonly to: StoredReport },
): Decided[] {
  const taken = new Set<string>();
  return decisions.flatMap((decided) => {
    const { part, position } = decided;
    const item = canonicalJson(from[part][position] ?? null);
    const next = to[part].findIndex((other, index) => !taken.has(`${part} ${index}`) && canonicalJson(other) === item);
    if (next === -1) return [];
    taken.add(`${part} ${next}`);
    return [{ ...decided, position: next }];
  });
}

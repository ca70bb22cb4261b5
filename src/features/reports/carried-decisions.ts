import { canonicalJson } from "@/engine/pattern";
import type { ReportDecision, StoredReport } from "./schema";

/** Decisions on items of a report that stand unchanged in its next version, at their places there. */
export function carriedDecisions<Decided extends Pick<ReportDecision, "part" | "position">>(
  decisions: readonly Decided[],
  { from, to }: { readonly from: StoredReport; readonly to: StoredReport },
): Decided[] {
  const taken = new Set<string>();
  return decisions.flatMap((decided) => {
    const { part, position } = decided;
    const item = canonicalJson(from[part][position] ?? null);
    const now = to[part].findIndex((other, at) => !taken.has(`${part} ${at}`) && canonicalJson(other) === item);
    if (now === -1) return [];
    taken.add(`${part} ${now}`);
    return [{ ...decided, position: now }];
  });
}

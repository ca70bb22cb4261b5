import { canonicalJson } from "@/engine/pattern";
import type { ReportDecision, ReportPart, StoredReport } from "./schema";

type Decided = Pick<ReportDecision, "part" | "position"> & { readonly decision: string };

/** Decisions on items of a report that stand unchanged in its next version, at their places there. */
export function carriedDecisions<Kept extends Decided>(
  decisions: readonly Kept[],
  { from, to }: { readonly from: StoredReport; readonly to: StoredReport },
): { part: ReportPart; position: number; decision: string }[] {
  const taken = new Set<string>();
  return decisions.flatMap(({ part, position, decision }) => {
    const item = canonicalJson(from[part][position] ?? null);
    const now = to[part].findIndex((other, at) => !taken.has(`${part} ${at}`) && canonicalJson(other) === item);
    if (now === -1) return [];
    taken.add(`${part} ${now}`);
    return [{ part, position: now, decision }];
  });
}

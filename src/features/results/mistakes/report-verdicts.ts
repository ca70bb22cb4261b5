import "server-only";
import type { FlaggedItem } from "@/engine/results";
import { newestDecisions } from "../data";
import { loadResults, type ShownCall } from "../loaders";
import { PAGE_PARTS } from "../schema";
import type { MadeDecisions } from "./decision-copy";

/** What is known of the numbers of a tester's newest report. */
export interface ReportVerdicts {
  /** The tester's id in documents. */
  readonly tester: string;
  readonly decisions: MadeDecisions;
  /** Those of their numbers that the engine flags or somebody decided on; none while it is being calculated anew. */
  readonly flagged: readonly FlaggedItem[];
}

/** @param tester their id in documents. */
export async function loadReportVerdicts(shown: ShownCall, tester: string): Promise<ReportVerdicts> {
  const [{ progress, results }, decisions] = await Promise.all([
    loadResults(shown, PAGE_PARTS.doubtful),
    newestDecisions(shown.access, tester),
  ]);
  const flagged = progress.status === "current" ? (results?.flagged ?? []) : [];
  return { tester, decisions, flagged: flagged.filter((item) => item.tester === tester) };
}

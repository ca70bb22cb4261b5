import "server-only";
import type { GapsOutput } from "@/engine/gaps";
import { callScope, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import type { AnalysisInput } from "./analysis-input";
import { gapsOutputSchema } from "./schema";

/** What was reckoned for exactly this input: "stopped" where it took too long, null where nothing is kept. */
export async function storedAnalysis(access: CallAccess, input: AnalysisInput): Promise<GapsOutput | "stopped" | null> {
  const row = await database().analysis.findFirst({
    where: { ...input, call: callScope(access) },
    select: { output: true },
  });
  if (row === null) return null;
  return row.output === null ? "stopped" : gapsOutputSchema.parse(JSON.parse(row.output));
}

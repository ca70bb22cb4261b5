import { csvAnswer } from "@/features/results/csv-answer";
import { storedTesters } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/results/schema";
import { stepsCsv } from "@/features/results/gaps/steps-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/steps.csv">) {
  const loaded = await loadCall((await params).callId);
  const { unit } = loaded.viewer;
  return await csvAnswer(
    loaded,
    "steps",
    await loadResults(loaded, PAGE_PARTS.gaps),
    async ({ analysisId, pattern }) => {
      const testers = await storedTesters(loaded.access, { analysisId }, TESTER_PARTS.steps);
      return stepsCsv(testers, { pattern, unit });
    },
  );
}

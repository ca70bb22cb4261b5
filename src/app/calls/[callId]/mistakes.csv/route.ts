import { csvAnswer } from "@/features/results/csv-answer";
import { madeDecisions, testerNames } from "@/features/results/data";
import { mistakesCsv } from "@/features/results/mistakes/mistakes-csv";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS } from "@/features/results/schema";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/mistakes.csv">) {
  const loaded = await loadCall((await params).callId);
  const { access, viewer } = loaded;
  return await csvAnswer(
    loaded,
    "possible mistakes",
    await loadResults(loaded, PAGE_PARTS.doubtful),
    async ({ flagged, pattern }) => {
      const testers = flagged.map(({ tester }) => tester);
      const [names, decisions] = await Promise.all([testerNames(access, testers), madeDecisions(access, testers)]);
      return mistakesCsv(flagged, { pattern, names, decisions, unit: viewer.unit });
    },
  );
}

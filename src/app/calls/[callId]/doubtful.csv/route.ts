import { csvAnswer } from "@/features/analyses/csv-answer";
import { madeDecisions, testerNames } from "@/features/analyses/data";
import { doubtfulCsv } from "@/features/analyses/doubtful-csv";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS } from "@/features/analyses/schema";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/doubtful.csv">) {
  const loaded = await loadCall((await params).callId);
  const { access, viewer } = loaded;
  return await csvAnswer(
    loaded,
    "possible mistakes",
    await loadResults(loaded, PAGE_PARTS.doubtful),
    async ({ flagged, pattern }) => {
      const testers = flagged.map(({ tester }) => tester);
      const [names, decisions] = await Promise.all([testerNames(access, testers), madeDecisions(access, testers)]);
      return doubtfulCsv(flagged, { pattern, names, decisions, unit: viewer.unit });
    },
  );
}

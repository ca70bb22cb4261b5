import { csvAnswer } from "@/features/analyses/csv-answer";
import { testerNames } from "@/features/analyses/data";
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
      const names = await testerNames(
        access,
        flagged.map(({ tester }) => tester),
      );
      return doubtfulCsv(flagged, { pattern, names, unit: viewer.unit });
    },
  );
}

import { csvAnswer } from "@/features/results/csv-answer";
import { gapBoard } from "@/features/results/gaps/gap-board";
import { gapsCsv } from "@/features/results/gaps/gaps-csv";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS } from "@/features/results/schema";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/differences.csv">) {
  const loaded = await loadCall((await params).callId);
  const results = await loadResults(loaded, PAGE_PARTS.gaps);
  return await csvAnswer(loaded, "differences", results, (found) =>
    gapsCsv(gapBoard(found, loaded.viewer.unit), found.pattern),
  );
}

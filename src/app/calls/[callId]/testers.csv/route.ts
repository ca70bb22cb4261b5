import { csvAnswer } from "@/features/analyses/csv-answer";
import { storedTesters } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/analyses/schema";
import { testerBoard } from "@/features/analyses/tester-board";
import { testersCsv } from "@/features/analyses/testers-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/testers.csv">) {
  const loaded = await loadCall((await params).callId);
  return await csvAnswer(loaded, "measuring habits", await loadResults(loaded, PAGE_PARTS.testers), async (results) => {
    const rows = await storedTesters(loaded.access, results, TESTER_PARTS.testers);
    return testersCsv(testerBoard({ ...results, rows, testers: rows.length, places: [] }));
  });
}

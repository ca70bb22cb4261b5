import { csvAnswer } from "@/features/results/csv-answer";
import { storedTesters } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/results/schema";
import { testerBoard } from "@/features/results/habits/habits-board";
import { testersCsv } from "@/features/results/habits/habits-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/habits.csv">) {
  const loaded = await loadCall((await params).callId);
  return await csvAnswer(loaded, "measuring habits", await loadResults(loaded, PAGE_PARTS.testers), async (results) => {
    const rows = await storedTesters(loaded.access, results, TESTER_PARTS.testers);
    return testersCsv(testerBoard({ ...results, rows, testers: rows.length, places: [] }));
  });
}

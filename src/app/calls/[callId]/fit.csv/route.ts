import { csvAnswer } from "@/features/results/csv-answer";
import { fitBoard } from "@/features/results/fit/fit-board";
import { fitCsv } from "@/features/results/fit/fit-csv";
import { fitAnswers } from "@/features/results/fit/fit-data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS } from "@/features/results/schema";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/fit.csv">) {
  const loaded = await loadCall((await params).callId);
  const { access, viewer } = loaded;
  return await csvAnswer(loaded, "fit", await loadResults(loaded, PAGE_PARTS.fit), async (results) =>
    fitCsv(await fitAnswers(access), { areas: fitBoard(results), pattern: results.pattern, unit: viewer.unit }),
  );
}

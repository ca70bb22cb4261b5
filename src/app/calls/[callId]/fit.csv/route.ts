import { csvAnswer } from "@/features/analyses/csv-answer";
import { fitBoard } from "@/features/analyses/fit-board";
import { fitCsv } from "@/features/analyses/fit-csv";
import { fitAnswers } from "@/features/analyses/fit-data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS } from "@/features/analyses/schema";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/fit.csv">) {
  const loaded = await loadCall((await params).callId);
  const { access, viewer } = loaded;
  return await csvAnswer(loaded, "fit", await loadResults(loaded, PAGE_PARTS.fit), async (results) =>
    fitCsv(await fitAnswers(access), { areas: fitBoard(results), pattern: results.pattern, unit: viewer.unit }),
  );
}

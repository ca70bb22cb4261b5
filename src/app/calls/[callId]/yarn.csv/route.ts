import { csvAnswer } from "@/features/results/csv-answer";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS, yarnQuerySchema } from "@/features/results/schema";
import { yarnBoard } from "@/features/results/yarn/yarn-board";
import { yarnCsv } from "@/features/results/yarn/yarn-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(request: Request, { params }: RouteContext<"/calls/[callId]/yarn.csv">) {
  const loaded = await loadCall((await params).callId);
  const { round } = yarnQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { unit } = loaded.viewer;
  return await csvAnswer(loaded, "yarn", await loadResults(loaded, PAGE_PARTS.yarn), (results) =>
    yarnCsv(yarnBoard({ ...results, testers: [], names: new Map() }, { unit, roundTo: round })),
  );
}

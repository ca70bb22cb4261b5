import { csvAnswer } from "@/features/analyses/csv-answer";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, yarnQuerySchema } from "@/features/analyses/schema";
import { yarnBoard } from "@/features/analyses/yarn-board";
import { yarnCsv } from "@/features/analyses/yarn-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(request: Request, { params }: RouteContext<"/calls/[callId]/yarn.csv">) {
  const loaded = await loadCall((await params).callId);
  const { round } = yarnQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { unit } = loaded.viewer;
  return await csvAnswer(loaded, "yarn", await loadResults(loaded, PAGE_PARTS.yarn), (results) =>
    yarnCsv(yarnBoard({ ...results, testers: [], names: new Map() }, { unit, roundTo: round })),
  );
}

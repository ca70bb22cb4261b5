import { loadAnalysis } from "@/features/analyses/loaders";
import { yarnQuerySchema } from "@/features/analyses/schema";
import { yarnBoard } from "@/features/analyses/yarn-board";
import { yarnCsv } from "@/features/analyses/yarn-csv";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(request: Request, { params }: RouteContext<"/calls/[callId]/yarn.csv">) {
  const { access, viewer, call, revision } = await loadCall((await params).callId);
  const { round } = yarnQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const analysis = await loadAnalysis(access);
  if (analysis === null) return stillReckoned();
  return csvDownload(
    [revision.document.name, call.title, "yarn"],
    yarnCsv(yarnBoard(analysis, { unit: viewer.unit, roundTo: round })),
  );
}

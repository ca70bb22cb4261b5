import { gapBoard } from "@/features/analyses/gap-board";
import { gapsCsv } from "@/features/analyses/gaps-csv";
import { loadAnalysis } from "@/features/analyses/loaders";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/gaps.csv">) {
  const { access, viewer } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  if (analysis === null) return stillReckoned();
  return csvDownload("gaps.csv", gapsCsv(gapBoard(analysis.document, analysis.output, viewer.unit)));
}

import { gapBoard } from "@/features/analyses/gap-board";
import { gapsCsv } from "@/features/analyses/gaps-csv";
import { loadAnalysis } from "@/features/analyses/loaders";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/gaps.csv">) {
  const { access, viewer, call } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  if (analysis === null) return stillReckoned();
  const { document, output } = analysis;
  const csv = gapsCsv(gapBoard(document, output, viewer.unit), document.pattern);
  return csvDownload([document.pattern.name, call.title, "differences"], csv);
}

import { doubtfulCsv } from "@/features/analyses/doubtful-csv";
import { loadAnalysis } from "@/features/analyses/loaders";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/doubtful.csv">) {
  const { access, viewer, call, revision } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  return analysis === null
    ? stillReckoned()
    : csvDownload([revision.document.name, call.title, "possible mistakes"], doubtfulCsv(analysis, viewer.unit));
}

import { fitBoard } from "@/features/analyses/fit-board";
import { fitCsv } from "@/features/analyses/fit-csv";
import { loadAnalysis } from "@/features/analyses/loaders";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/fit.csv">) {
  const { access, viewer, call, revision } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  return analysis === null
    ? stillReckoned()
    : csvDownload([revision.document.name, call.title, "fit"], fitCsv(fitBoard(analysis), viewer.unit));
}

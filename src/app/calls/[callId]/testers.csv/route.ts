import { loadAnalysis } from "@/features/analyses/loaders";
import { testerBoard } from "@/features/analyses/tester-board";
import { testersCsv } from "@/features/analyses/testers-csv";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/testers.csv">) {
  const { access, call, revision } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  return analysis === null
    ? stillReckoned()
    : csvDownload([revision.document.name, call.title, "measuring habits"], testersCsv(testerBoard(analysis)));
}

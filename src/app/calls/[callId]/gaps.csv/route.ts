import { gapBoard } from "@/features/analyses/gap-board";
import { gapsCsv } from "@/features/analyses/gaps-csv";
import { loadAnalysis } from "@/features/analyses/loaders";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/gaps.csv">) {
  const { access, viewer } = await loadCall((await params).callId);
  const { document, output } = await loadAnalysis(access);
  return new Response(gapsCsv(gapBoard(document, output, viewer.unit)), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="gaps.csv"',
      "cache-control": "private, no-store",
    },
  });
}

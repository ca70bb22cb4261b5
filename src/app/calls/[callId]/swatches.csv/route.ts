import { loadAnalysis } from "@/features/analyses/loaders";
import { swatchView } from "@/features/analyses/swatch-view";
import { swatchesCsv } from "@/features/analyses/swatches-csv";
import { loadCall } from "@/features/calls/loaders";
import { csvDownload, stillReckoned } from "@/server/csv-download";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/swatches.csv">) {
  const { access, viewer, call, revision } = await loadCall((await params).callId);
  const analysis = await loadAnalysis(access);
  if (analysis === null) return stillReckoned();
  return csvDownload(
    [revision.document.name, call.title, "swatches"],
    swatchesCsv(swatchView(analysis, viewer.unit), viewer.unit),
  );
}

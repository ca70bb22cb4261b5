import { csvAnswer } from "@/features/analyses/csv-answer";
import { storedTesters } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/analyses/schema";
import { swatchView } from "@/features/analyses/swatch-view";
import { swatchesCsv } from "@/features/analyses/swatches-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/swatches.csv">) {
  const loaded = await loadCall((await params).callId);
  const { unit } = loaded.viewer;
  return await csvAnswer(loaded, "swatches", await loadResults(loaded, PAGE_PARTS.swatches), async (results) => {
    const testers = await storedTesters(loaded.access, results, TESTER_PARTS.swatches);
    return swatchesCsv(swatchView({ ...results, testers, names: new Map() }, unit), unit);
  });
}

import { csvAnswer } from "@/features/results/csv-answer";
import { storedTesters } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/results/schema";
import { swatchView } from "@/features/results/swatches/swatch-view";
import { swatchesCsv } from "@/features/results/swatches/swatches-csv";
import { loadCall } from "@/features/calls/loaders";

export async function GET(_request: Request, { params }: RouteContext<"/calls/[callId]/swatches.csv">) {
  const loaded = await loadCall((await params).callId);
  const { unit } = loaded.viewer;
  return await csvAnswer(loaded, "swatches", await loadResults(loaded, PAGE_PARTS.swatches), async (results) => {
    const testers = await storedTesters(loaded.access, results, TESTER_PARTS.swatches);
    return swatchesCsv(swatchView({ ...results, testers, names: new Map() }, unit), unit);
  });
}

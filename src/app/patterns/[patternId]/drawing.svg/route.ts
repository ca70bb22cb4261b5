import { notFound } from "next/navigation";
import { ALL_SIZES, chooseSizes } from "@/features/patterns/drawing/choose-sizes";
import { garmentSheet, isPrintScale } from "@/features/patterns/drawing/print/garment-sheet";
import { printSheet } from "@/features/patterns/drawing/print/print-sheet";
import { loadPattern } from "@/features/patterns/loaders";

export async function GET(request: Request, { params }: RouteContext<"/patterns/[patternId]/drawing.svg">) {
  const { revision, viewer } = await loadPattern((await params).patternId);
  const query = new URL(request.url).searchParams;
  const [asked, scale] = [query.get("size"), query.get("scale")];
  const sizes = chooseSizes(revision.document, asked);
  if (sizes === null) notFound();
  const sheet = { pattern: revision.document, sizes, isAllSizes: asked === ALL_SIZES, unit: viewer.unit };
  const [size] = sizes;
  if (scale !== null && !isPrintScale(scale)) notFound();
  const svg =
    scale === null || size === undefined
      ? printSheet(sheet)
      : garmentSheet({ pattern: revision.document, size, unit: viewer.unit, scale });
  return new Response(svg, {
    headers: {
      "content-type": "image/svg+xml; charset=utf-8",
      "content-disposition": 'inline; filename="pieces.svg"',
      "cache-control": "private, no-store",
    },
  });
}

import { notFound } from "next/navigation";
import { ALL_SIZES, chooseSizes } from "@/features/patterns/drawing/choose-sizes";
import { printSheet } from "@/features/patterns/drawing/print/print-sheet";
import { loadPattern } from "@/features/patterns/loaders";

export async function GET(request: Request, { params }: RouteContext<"/patterns/[patternId]/drawing.svg">) {
  const { revision, viewer } = await loadPattern((await params).patternId);
  const asked = new URL(request.url).searchParams.get("size");
  const sizes = chooseSizes(revision.document, asked);
  if (sizes === null) notFound();
  const sheet = { pattern: revision.document, sizes, isAllSizes: asked === ALL_SIZES, unit: viewer.unit };
  return new Response(printSheet(sheet), {
    headers: {
      "content-type": "image/svg+xml; charset=utf-8",
      "content-disposition": 'inline; filename="pieces.svg"',
      "cache-control": "private, no-store",
    },
  });
}

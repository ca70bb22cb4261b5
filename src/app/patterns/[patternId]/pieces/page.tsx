import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { ALL_SIZES, chooseSizes } from "@/features/patterns/drawing/choose-sizes";
import { NoPieces, PiecesView } from "@/features/patterns/drawing/pieces-view";
import { loadPattern } from "@/features/patterns/loaders";

export const metadata: Metadata = { title: "Pieces" };

export default async function PiecesPage({ params, searchParams }: PageProps<"/patterns/[patternId]/pieces">) {
  const { patternId } = await params;
  const { size: asked = null } = await searchParams;
  const page = await loadPattern(patternId);
  const pattern = page.revision.document;
  const sizes = chooseSizes(pattern, asked);
  if (sizes === null) notFound();
  const home = `/patterns/${patternId}`;
  return (
    <PatternFrame page={page} tab="pieces">
      {pattern.garment.pieces.length === 0 ? (
        <NoPieces home={home} mayEdit={page.mayEdit} />
      ) : (
        <PiecesView
          pattern={pattern}
          sizes={sizes}
          isAllSizes={asked === ALL_SIZES}
          unit={page.viewer.unit}
          home={home}
        />
      )}
    </PatternFrame>
  );
}

import { PatternList } from "@/features/patterns/components/pattern-list";
import type { PatternSummary } from "@/features/patterns/data";
import { MainPhoto } from "@/features/testing/photos/main-photo";
import { readMainPhotos } from "@/features/testing/photos/sample-data";
import { requireViewer } from "@/server/viewer";

/** The viewer's patterns, each with its main photo. */
export async function PatternCards({ patterns }: { readonly patterns: readonly PatternSummary[] }) {
  const photos = await readMainPhotos(await requireViewer());
  return (
    <PatternList
      patterns={patterns}
      photoOf={({ patternId, document }) => {
        const photo = photos.get(patternId);
        return photo === undefined ? null : <MainPhoto photo={photo} patternName={document.name} />;
      }}
    />
  );
}

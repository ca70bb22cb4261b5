import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { patternAccess } from "@/features/patterns/access";
import { PatternFrame } from "@/features/patterns/components/pattern-frame";
import { loadPattern } from "@/features/patterns/loaders";
import { ownPhotosQuerySchema } from "@/features/testing/photos/photo-schema";
import { readOwnSample } from "@/features/testing/photos/sample-data";
import { SampleView } from "@/features/testing/photos/sample-view";

export const metadata: Metadata = { title: "Photos" };

export default async function SamplePhotosPage({ params, searchParams }: PageProps<"/patterns/[patternId]/photos">) {
  const { patternId } = await params;
  const page = await loadPattern(patternId);
  const { problem } = ownPhotosQuerySchema.parse(await searchParams);
  const photos = await readOwnSample(await patternAccess(page.viewer, patternId, "viewer"));
  return (
    <PatternFrame page={page} tab="photos">
      <SampleView
        {...{ patternId, photos, problem }}
        patternName={page.revision.document.name}
        mayEdit={page.mayEdit}
        formKey={randomUUID()}
      />
    </PatternFrame>
  );
}

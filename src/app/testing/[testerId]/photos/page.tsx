import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { NextBar } from "@/features/testing/report/autosave/step-bar";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";
import { readOwnPhotos } from "@/features/testing/photos/photo-data";
import { ownPhotosQuerySchema } from "@/features/testing/photos/photo-schema";
import { agreedSharing } from "@/features/testing/photos/sharing-data";
import { SharingSection } from "@/features/testing/photos/sharing-section";
import { OwnPhotosView } from "@/features/testing/photos/own-photos-view";

export const metadata: Metadata = { title: "Photos" };

export default async function OwnPhotosPage({ params, searchParams }: PageProps<"/testing/[testerId]/photos">) {
  const loaded = await loadTester((await params).testerId);
  const { problem } = ownPhotosQuerySchema.parse(await searchParams);
  const [own, agreed] = await Promise.all([readOwnPhotos(loaded.access), agreedSharing(loaded.access)]);
  return (
    <TesterFrame
      loaded={loaded}
      step="photos"
      title="Photos"
      intro="Optional. Your report can be sent without photos. Only the designer and their helpers see them, unless you allow more below."
    >
      <OwnPhotosView tester={loaded.tester} {...{ own, problem }} formKey={randomUUID()} />
      <SharingSection agreed={agreed} />
      <NextBar next={nextPage(loaded, "photos")} />
    </TesterFrame>
  );
}

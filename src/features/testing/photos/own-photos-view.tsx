import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { WatchFor } from "@/ui/watch-for";
import type { TesterRead } from "../home/data";
import { ConsentForm } from "./consent-form";
import { OwnPhotoList } from "./own-photos";
import { PROBLEM_SENTENCES } from "./photo-copy";
import type { OwnPhotos } from "./photo-data";
import { PhotoForm } from "./photo-form";
import { MAX_PHOTOS, PHOTO_VIEWS, type PhotoProblem } from "./photo-views";

interface OwnPhotosViewProps {
  readonly tester: Pick<TesterRead, "testerId" | "creditName" | "stoppedAt" | "call">;
  readonly own: OwnPhotos;
  /** Why the last one sent without scripts was not taken. */
  readonly problem: PhotoProblem | undefined;
  readonly formKey: string;
}

/** A tester's photos: to send, to look at, to delete, and for what they may be used. */
export function OwnPhotosView({ tester, own: { photos, allowed, isOfChild }, problem, formKey }: OwnPhotosViewProps) {
  const { testerId, creditName, stoppedAt, call } = tester;
  const maySend = call.status === "open" && stoppedAt === null;
  return (
    <>
      {problem === undefined ? null : <Notice tone="problem" title={PROBLEM_SENTENCES[problem]} />}
      {maySend ? (
        <Sheet className="mb-10">
          <PhotoForm owner={{ testerId }} views={PHOTO_VIEWS} stored={photos.length} formKey={formKey} />
        </Sheet>
      ) : (
        <p className="mb-6">
          No photos can be added. You can still delete photos, and change what they may be used for.
        </p>
      )}
      <Section title="Your photos">
        {photos.length === 0 ? (
          <p className="text-soft">None yet. You can send up to {MAX_PHOTOS}.</p>
        ) : (
          <>
            <p className="mb-4 text-soft numbers">
              {photos.length} of up to {MAX_PHOTOS}
            </p>
            <OwnPhotoList testerId={testerId} photos={photos} />
          </>
        )}
        {photos.some(({ state }) => state === "received") ? (
          <WatchFor address={`/testing/${testerId}/photos/state`} />
        ) : null}
      </Section>
      <Section
        title="Who may use your photos"
        intro={
          <>
            <bdi>{call.designerName}</bdi> and their helpers see them. Allow more only if you like; you can change this
            at any time.
          </>
        }
      >
        <ConsentForm key={allowed.join()} {...{ testerId, allowed, creditName, isOfChild }} />
      </Section>
    </>
  );
}

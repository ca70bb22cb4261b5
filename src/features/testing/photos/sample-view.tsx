import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { WatchFor } from "@/ui/watch-for";
import { PROBLEM_SENTENCES } from "./photo-copy";
import { PhotoForm } from "./photo-form";
import { MAX_PHOTOS, SAMPLE_VIEWS, type PhotoProblem } from "./photo-views";
import type { OwnPhoto } from "./own-photo-data";
import { SamplePhotoList } from "./sample-photo-list";

interface SampleViewProps {
  readonly patternId: string;
  readonly patternName: string;
  readonly photos: readonly OwnPhoto[];
  readonly mayEdit: boolean;
  /** Why the last one sent without scripts was not taken. */
  readonly problem: PhotoProblem | undefined;
  readonly formKey: string;
}

/** The designer's photos of their sample: to send, to describe, to choose the main one of. */
export function SampleView({ patternId, patternName, photos, mayEdit, problem, formKey }: SampleViewProps) {
  return (
    <>
      <p className="mb-6 max-w-3xl text-soft">
        Photos of the sample that you made. The main photo stands for the pattern in your list and in previews of links
        to its tester calls. Once a tester call is published, everybody can see all of these photos on its page; until
        then, only you and your helpers.
      </p>
      {problem === undefined ? null : <Notice tone="problem" title={PROBLEM_SENTENCES[problem]} />}
      {mayEdit ? (
        <Sheet className="mb-10">
          <PhotoForm owner={{ patternId }} views={SAMPLE_VIEWS} stored={photos.length} formKey={formKey} />
        </Sheet>
      ) : null}
      {photos.length === 0 ? (
        mayEdit ? null : (
          <EmptyState title="No photos yet">
            <p>Those who edit this pattern can add photos of its sample.</p>
          </EmptyState>
        )
      ) : (
        <Section
          title="Your sample"
          intro={
            <span className="numbers">
              {photos.length} of up to {MAX_PHOTOS}
            </span>
          }
        >
          <SamplePhotoList {...{ patternId, patternName, photos, mayEdit }} />
        </Section>
      )}
      {photos.some(({ state }) => state === "received") ? (
        <WatchFor address={`/patterns/${patternId}/photos/state`} />
      ) : null}
    </>
  );
}

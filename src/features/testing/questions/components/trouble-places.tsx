import type { PatternDocument } from "@/engine/pattern";
import { photosOfTrouble, type ProblemPhoto } from "@/features/testing/photos/problem-photo-data";
import { ProblemPhotos } from "@/features/testing/photos/problem-photos";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { TroubledPlaces } from "../place-notes-data";
import { questionsHref } from "../questions-query";
import { MoreNotes } from "./more-notes";
import { QuotedPlace } from "./quoted-place";
import { NoteAuthor, sizeLabel } from "./note-author";

interface TroublePlacesProps {
  readonly troubled: TroubledPlaces;
  /** What the shown testers photographed of their problems. */
  readonly photos: readonly ProblemPhoto[];
  readonly pattern: PatternDocument;
  readonly callId: string;
  /** The address of another page. */
  readonly hrefOf?: (page: number) => string;
  /** Only one passage is shown, with everything about it. */
  readonly isOnePlace?: boolean;
}

/** The passages where something went wrong, those with most testers first. */
export function TroublePlaces({ troubled, photos, pattern, callId, hrefOf, isOnePlace = false }: TroublePlacesProps) {
  const { places, page, pages } = troubled;
  const troublesHref = (troubles: number) => questionsHref(callId, { troubles });
  return (
    <Section
      title="Trouble spots in the text"
      intro="Passages of the instructions where something went wrong, and what testers did about it."
    >
      {places.length === 0 ? (
        <p className="text-soft">No tester has reported a problem with the text.</p>
      ) : (
        <ol className="grid grid-cols-1 gap-6">
          {places.map((place) => (
            <li key={place.key}>
              <TroublePlace
                {...{ place, photos, pattern }}
                allHref={isOnePlace ? null : questionsHref(callId, { at: place.key })}
              />
            </li>
          ))}
        </ol>
      )}
      <Paging label="Pages of trouble spots" {...{ page, pages }} hrefOf={hrefOf ?? troublesHref} />
    </Section>
  );
}

interface TroublePlaceProps extends Pick<TroublePlacesProps, "photos"> {
  readonly place: TroubledPlaces["places"][number];
  readonly pattern: PatternDocument;
  readonly allHref: string | null;
}

function TroublePlace({ place: { block, notes, troubles }, photos, pattern, allHref }: TroublePlaceProps) {
  const [first] = notes;
  if (first === undefined) return null;
  const { testers, shown, many } = troubles;
  const was = { words: first.place.words, revisionNumber: first.revisionNumber };
  return (
    <Sheet>
      <p className="mb-4 font-semibold">
        {testers === 1 ? "1 tester" : `${testers} testers`} had a problem here{" "}
        <span className="font-normal text-soft">in {sizesOf(troubles.sizes, pattern)}</span>
      </p>
      <div className="grid grid-cols-1 gap-x-10 gap-y-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,3fr)]">
        <QuotedPlace text={pattern.instructions ?? ""} block={block} was={was} />
        <div>
          <ul className="grid content-start gap-4">
            {shown.map((trouble) => (
              <li key={trouble.id}>
                <p dir="auto" className="whitespace-pre-line wrap-anywhere">
                  {trouble.happened}
                </p>
                {trouble.did === "" ? null : (
                  <p dir="auto" className="mt-1 whitespace-pre-line wrap-anywhere">
                    <span className="text-soft">What they did: </span>
                    {trouble.did}
                  </p>
                )}
                <NoteAuthor note={trouble} pattern={pattern} />
                <ProblemPhotos
                  photos={photosOfTrouble(photos, trouble)}
                  name={trouble.tester?.name ?? "a former tester"}
                />
              </li>
            ))}
          </ul>
          <MoreNotes href={allHref} many={many} shown={shown.length} of="trouble spots" />
        </div>
      </div>
    </Sheet>
  );
}

/** `S, M and 2X`, each with its number of testers if there are several. */
function sizesOf(sizes: Readonly<Record<string, number>>, pattern: PatternDocument): string {
  const bySize = pattern.sizes.flatMap(({ id }) => {
    const testers = sizes[id] ?? 0;
    return testers === 0 ? [] : [testers === 1 ? sizeLabel(pattern, id) : `${sizeLabel(pattern, id)} (${testers})`];
  });
  return new Intl.ListFormat("en-GB").format(bySize);
}

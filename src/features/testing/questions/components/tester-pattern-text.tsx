import type { ReactNode } from "react";
import type { Place } from "@/engine/instructions";
import type { PatternDocument } from "@/engine/pattern";
import type { OwnTrouble, ReadQuestion } from "../data";
import { groupByPlace, type PlaceGroup } from "../group-by-place";
import type { PlaceQuery } from "../place-query";
import { shownBlocks } from "../shown-blocks";
import type { PassageCorrections } from "../../corrections/passage-corrections";
import type { AddingPhotos } from "./trouble-photos";
import { BlockNotes, CorrectionNotes } from "./block-notes";
import { InstructionsText } from "./instructions-text";
import { PlaceForm } from "./place-form";

interface TesterPatternTextProps {
  readonly pattern: PatternDocument;
  readonly sizeId: string;
  readonly testerId: string;
  readonly notes: { readonly questions: readonly ReadQuestion[]; readonly troubles: readonly OwnTrouble[] };
  readonly query: PlaceQuery | null;
  /** The photos that may be added to trouble spots; null where none may. */
  readonly adding: AddingPhotos | null;
  /** The sizes whose numbers are shown. */
  readonly sizesShown: "all" | "own";
  /** By the key of a passage: numbers that corrections change in it, and what they say. */
  readonly corrected: ReadonlyMap<string, PassageCorrections>;
  /** The call is open, so questions can be sent. */
  readonly mayWrite: boolean;
}

/** The written instructions for one tester: the numbers of their size marked, with notes below each block. */
export function TesterPatternText({
  pattern,
  sizeId,
  testerId,
  notes,
  query,
  adding,
  sizesShown,
  corrected,
  mayWrite,
}: TesterPatternTextProps) {
  const text = pattern.instructions ?? "";
  const questions = groupByPlace(text, notes.questions);
  const troubles = groupByPlace(text, notes.troubles);
  const size = { count: pattern.sizes.length, index: pattern.sizes.findIndex(({ id }) => id === sizeId) };
  const changes = new Map([...corrected].map(([key, { numbers }]) => [key, numbers] as const));
  const blocks = shownBlocks(text, size, sizesShown, changes);
  const here = `/testing/${testerId}/pattern`;
  const saying = mayWrite && blocks.some(({ key }) => key === query?.place) ? query : null;
  const noted = [...questions, ...troubles].map(({ key }) => key);
  const keys = new Set([...noted, ...corrected.keys(), saying?.place ?? ""]);
  const below = (key: string) => (
    <>
      <CorrectionNotes texts={corrected.get(key)?.texts ?? []} />
      <BlockNotes
        questions={questions.find((group) => group.key === key)?.notes ?? []}
        troubles={troubles.find((group) => group.key === key)?.notes ?? []}
        {...{ testerId, adding }}
      />
      {saying?.place === key ? (
        <div className="mt-3 max-w-2xl rounded-md border border-l-4 border-line-strong border-l-thread bg-sheet p-4">
          <PlaceForm testerId={testerId} query={saying} closeHref={`${here}#place-${key}`} />
        </div>
      ) : null}
    </>
  );
  return (
    <>
      <InstructionsText
        testerId={testerId}
        blocks={blocks}
        below={Object.fromEntries([...keys].map((key) => [key, below(key)]))}
        saying={saying?.place ?? null}
        sayHref={mayWrite ? here : null}
      />
      {questions.filter(isGone).map(({ key, notes }) => (
        <GonePlace key={key} notes={notes}>
          <BlockNotes questions={notes} troubles={[]} {...{ testerId, adding }} />
        </GonePlace>
      ))}
      {troubles.filter(isGone).map(({ key, notes }) => (
        <GonePlace key={key} notes={notes}>
          <BlockNotes questions={[]} troubles={notes} {...{ testerId, adding }} />
        </GonePlace>
      ))}
    </>
  );
}

function isGone({ block }: PlaceGroup<unknown>): boolean {
  return block === null;
}

interface GonePlaceProps {
  readonly notes: readonly { readonly place: Place }[];
  readonly children: ReactNode;
}

/** Notes about a passage that the tester's text does not contain, with its original words. */
function GonePlace({ notes: [first], children }: GonePlaceProps) {
  return (
    <div className="mt-8">
      <p className="max-w-2xl text-soft wrap-anywhere">
        About a passage that is not in your text: “<bdi>{first?.place.words}</bdi>”
      </p>
      {children}
    </div>
  );
}

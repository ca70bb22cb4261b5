import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { readInstructions } from "@/engine/instructions";
import { patternOfPieces } from "@/engine/pattern";
import { piecesWords } from "@/features/calls/pieces-computed";
import { SizeFinished } from "@/features/patterns/in-size/size-finished";
import { SizeGlance } from "@/features/patterns/in-size/size-glance";
import { SizeNumbers } from "@/features/patterns/in-size/size-numbers";
import { GarmentPicture } from "@/features/patterns/drawing/garment-picture";
import { correctionsFor } from "@/features/testing/corrections/correction-data";
import { NumberChanges } from "@/features/testing/corrections/number-changes";
import {
  changedNumbers,
  correctedPattern,
  passageCorrections,
} from "@/features/testing/corrections/passage-corrections";
import { OwnCorrections } from "@/features/testing/news/own-corrections";
import { NoInstructions } from "@/features/testing/questions/components/no-instructions";
import { TesterPatternText } from "@/features/testing/questions/components/tester-pattern-text";
import { TextPartsNav } from "@/features/testing/questions/components/text-parts-nav";
import { countOwnPhotos } from "@/features/testing/photos/photo-data";
import { placeNotes } from "@/features/testing/questions/data";
import { placeKey } from "@/features/testing/questions/place-key";
import { photoQuery, placeQuery } from "@/features/testing/questions/place-query";
import { textParts } from "@/features/testing/questions/text-parts";
import { TesterFrame } from "@/features/testing/home/components/tester-frame";
import { loadTester } from "@/features/testing/home/loaders";
import { nextPage } from "@/features/testing/home/tester-steps";
import { KeptPageNotice } from "@/features/testing/reading/kept-page-notice";
import { OwnPlaceLink } from "@/features/testing/reading/own-place-link";
import { SizesShownForm } from "@/features/testing/reading/sizes-shown-form";
import { NextBar } from "@/features/testing/report/autosave/step-bar";
import { momentWords } from "@/ui/moment-copy";

export const metadata: Metadata = { title: "The pattern" };

const NUMBERS = [
  { anchor: "numbers", label: "Your numbers" },
  { anchor: "finished", label: "Finished measurements" },
  { anchor: "pieces", label: "Pieces" },
] as const;

export default async function TesterPatternPage({ params, searchParams }: PageProps<"/testing/[testerId]/pattern">) {
  const { testerId } = await params;
  const asked = await searchParams;
  const query = placeQuery(asked);
  const loaded = await loadTester(testerId);
  const { access, tester } = loaded;
  const { document: pattern, number } = tester.revision;
  const size = pattern.sizes.find(({ id }) => id === tester.size.id);
  if (size === undefined) notFound();
  const corrections = await correctionsFor(access, { size: size.id });
  const inSize = { pattern: correctedPattern(pattern, size.id, corrections), size, unit: tester.unit };
  const made = { ...inSize, pattern: patternOfPieces(inSize.pattern, tester.call.pieces) };
  const only = piecesWords(pattern, tester.call.pieces);
  const text = pattern.instructions ?? "";
  const parts = textParts(text);
  const { sizesShown, timeZone, stoppedAt } = tester;
  const about = text.trim() === "" ? null : { pattern, sizeId: size.id, testerId, query, sizesShown };
  const mayWrite = tester.call.status === "open";
  const isMaking = mayWrite && stoppedAt === null;
  const adding = isMaking
    ? { openAt: photoQuery(asked), stored: await countOwnPhotos(access), formKey: randomUUID() }
    : null;
  const passages = readInstructions(text).map(({ place }) => placeKey(place));
  return (
    <TesterFrame
      loaded={loaded}
      step="pattern"
      title="The pattern"
      intro={`Revision ${number}, the one you work from.${only === null ? "" : ` You make only: ${only}.`}`}
    >
      <KeptPageNotice
        path={`/testing/${testerId}/pattern`}
        readAt={momentWords(new Date(), { timeZone, edge: "time" })}
        mayKeep={isMaking}
      />
      <SizeGlance {...inSize} />
      <OwnCorrections corrections={corrections} loaded={loaded} />
      <TextPartsNav
        parts={[...(about ? [{ anchor: "instructions", label: "Instructions" }, ...parts] : []), ...NUMBERS]}
        first={<OwnPlaceLink {...{ testerId, passages }} />}
      />
      {about ? (
        <Part anchor="instructions" title="Instructions">
          <SizesShownForm {...{ testerId, sizesShown }} sizeLabel={size.label} />
          <TesterPatternText
            {...about}
            corrected={passageCorrections(pattern, size.id, corrections)}
            notes={await placeNotes(access)}
            {...{ adding, mayWrite }}
          />
        </Part>
      ) : (
        <NoInstructions />
      )}
      <Part anchor="numbers" title={`Your numbers, ${size.label}`}>
        <SizeNumbers {...made} />
        <NumberChanges
          numbers={changedNumbers(pattern, inSize.pattern, size.id)}
          pattern={pattern}
          size={size.id}
          title="Corrected here"
        />
      </Part>
      <Part anchor="finished" title="Finished measurements">
        <SizeFinished {...made} />
      </Part>
      <Part anchor="pieces" title="Pieces">
        <GarmentPicture {...made} />
      </Part>
      <NextBar next={nextPage(loaded, "pattern")} />
    </TesterFrame>
  );
}

interface PartProps {
  readonly anchor: string;
  readonly title: string;
  readonly children: ReactNode;
}

function Part({ anchor, title, children }: PartProps) {
  return (
    <section aria-labelledby={anchor} className="mb-12">
      <h2 id={anchor} className="mb-4 scroll-mt-16">
        {title}
      </h2>
      {children}
    </section>
  );
}

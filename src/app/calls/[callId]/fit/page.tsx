import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import type { PatternDocument, Size } from "@/engine/pattern";
import { FitMark } from "@/features/results/fit/fit-mark";
import { FitPictureSection } from "@/features/results/fit/fit-picture-section";
import { FitView, NoFitNotes } from "@/features/results/fit/fit-view";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { fitBoard, type FitArea } from "@/features/results/fit/fit-board";
import { fitMarks, pictureSize } from "@/features/results/fit/fit-picture";
import { fitRemarks, type FitRemarks } from "@/features/results/fit/fit-data";
import { loadResults, type Results } from "@/features/results/loaders";
import { PAGE_PARTS, type PageParts } from "@/features/results/schema";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall, type LoadedCall } from "@/features/calls/loaders";
import { GarmentPicture } from "@/features/patterns/drawing/garment-picture";
import { TroublePlaces } from "@/features/testing/questions/components/trouble-places";
import { troubledPlaces } from "@/features/testing/questions/place-notes-data";
import { questionsQuerySchema } from "@/features/testing/questions/questions-query";
import { PhotosInSize } from "../photos-in-size";
import { photosOfTroubles } from "../photos-of-troubles";

export const metadata: Metadata = { title: CALL_PAGES.fit.name };

export default async function FitPage({ params, searchParams }: PageProps<"/calls/[callId]/fit">) {
  const { callId } = await params;
  const { size: asked } = await searchParams;
  const loaded = await loadCall(callId);
  const [found, remarks, troubled] = await Promise.all([
    loadResults(loaded, PAGE_PARTS.fit),
    fitRemarks(loaded.access),
    troubledPlaces(loaded.access, loaded.revision.document, questionsQuerySchema.parse({})),
  ]);
  const troublePhotos = await photosOfTroubles(loaded.access, troubled);
  return (
    <CallPage loaded={loaded} page="fit">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => <Fit {...{ loaded, results, remarks, asked }} />}
      </ResultsFrame>
      <div className="mt-12">
        <TroublePlaces {...{ troubled, callId }} photos={troublePhotos} pattern={loaded.revision.document} />
      </div>
    </CallPage>
  );
}

interface FitProps {
  readonly loaded: LoadedCall;
  readonly results: Results<PageParts<"fit">>;
  readonly remarks: FitRemarks;
  readonly asked: string | string[] | undefined;
}

function Fit({ loaded, results, remarks, asked }: FitProps) {
  const { call, mayEdit, viewer } = loaded;
  const { pattern } = results;
  const areas = fitBoard(results);
  const size = pictureSize(pattern, areas, asked);
  if (size === null) notFound();
  if (areas.length === 0) return <NoFitNotes />;
  const { callId, patternId } = call;
  const photos = <PhotosInSize access={loaded.access} size={size} />;
  const picture = <Picture {...{ areas, size, callId, pattern, unit: viewer.unit, photos }} />;
  return (
    <FitView
      areas={areas}
      call={{ callId, patternId, mayEdit }}
      {...{ pattern, unit: viewer.unit, picture, remarks }}
    />
  );
}

interface PictureProps {
  readonly areas: readonly FitArea[];
  readonly size: Size;
  readonly callId: string;
  readonly pattern: PatternDocument;
  readonly unit: LoadedCall["viewer"]["unit"];
  readonly photos: ReactNode;
}

function Picture({ areas, size, callId, pattern, unit, photos }: PictureProps) {
  const marks = fitMarks(areas, size).map(
    ({ measurement, ...mark }) => [measurement, <FitMark key={measurement} {...mark} />] as const,
  );
  return (
    <FitPictureSection
      {...{ areas, size, callId, pattern, unit, photos }}
      picture={<GarmentPicture {...{ pattern, size, unit }} marks={new Map(marks)} />}
    />
  );
}

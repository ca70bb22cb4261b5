import type { ReactNode } from "react";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { ChoiceLinks } from "@/ui/choice-links";
import { IntervalRulerScale } from "@/ui/interval-ruler";
import { ScaleCounts } from "@/ui/scale-counts";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { areasInSize, type AreaInSize } from "./fit-picture";
import { answersIn, type FitArea } from "./fit-board";
import { answersWords } from "./fit-copy";
import { drawnGap, FIT_REACH } from "./fit-content";
import { GapBeside } from "./fit-table";

interface FitPictureSectionProps {
  readonly areas: readonly FitArea[];
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly callId: string;
  readonly unit: LengthUnit;
  /** The garment in that size with the answers at the measuring lines. */
  readonly picture: ReactNode;
  /** Photos of that size's testers, where there are any. */
  readonly photos: ReactNode;
}

/** One size at a glance: the garment with testers' answers where each measurement is taken, and the same as a list beside the differences. */
export function FitPictureSection({ areas, pattern, size, callId, unit, picture, photos }: FitPictureSectionProps) {
  return (
    <Section title={`The garment in ${size.label}`} intro={pattern.garment.pieces.length === 0 ? null : <PictureKey />}>
      <div className="mb-5">
        <ChoiceLinks
          label="Size"
          choices={pattern.sizes.map(({ id, label }) => ({
            href: `/calls/${callId}/fit?size=${id}`,
            label,
            current: id === size.id,
          }))}
        />
      </div>
      <Sheet>
        <div className="grid grid-cols-1 gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
          {pattern.garment.pieces.length === 0 ? <NoDrawing /> : picture}
          <div>
            <IntervalRulerScale reach={FIT_REACH} />
            <ul className="grid gap-7">
              {areasInSize(areas, size).map((inSize) => (
                <li key={inSize.area.id}>
                  <AreaBeside inSize={inSize} size={size} unit={unit} />
                </li>
              ))}
            </ul>
          </div>
        </div>
        {photos}
      </Sheet>
    </Section>
  );
}

function PictureKey() {
  return (
    <p>
      Each measuring line has three numbers: how many testers say tight (◂, left), right (middle) and loose (▸, right).
      The largest is filled.
    </p>
  );
}

function NoDrawing() {
  return (
    <p className="text-soft">The pattern has no pieces yet, so there is no schematic. The list has the same numbers.</p>
  );
}

function AreaBeside({
  inSize: { area, row },
  size,
  unit,
}: {
  readonly inSize: AreaInSize;
  readonly size: Size;
  readonly unit: LengthUnit;
}) {
  const words = answersWords(row.counts, area);
  return (
    <>
      <h3 className="mb-1 wrap-anywhere">{area.label}</h3>
      {answersIn(row) === 0 ? null : (
        <>
          <div aria-hidden="true" className="flex justify-between text-sm text-soft">
            <span>◂ {area.isGirth ? "tight" : "tight, short"}</span>
            <span>{area.isGirth ? "loose" : "loose, long"} ▸</span>
          </div>
          <ScaleCounts title={`${area.label} in ${size.label}: ${words}`} counts={row.counts} />
        </>
      )}
      <p className="text-sm text-soft">{words.charAt(0).toUpperCase() + words.slice(1)}.</p>
      <dl className="mt-3 grid gap-3">
        {area.governing.map((measurement, index) => (
          <div key={measurement.id} className="grid grid-cols-[minmax(0,1fr)_minmax(0,1fr)] items-center gap-x-4">
            <dt className="text-sm wrap-anywhere">
              <span className="font-bold">{measurement.letter}</span> {measurement.label}
              {measurement.on === undefined ? <span className="text-soft"> (not on the schematic)</span> : null}
            </dt>
            <dd>
              {row.cells[index] ? (
                <GapBeside {...drawnGap(row.cells[index], { measurement, unit, size: size.label })} />
              ) : null}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}

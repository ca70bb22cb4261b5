import Link from "next/link";
import type { ReactNode } from "react";
import { measure, indexPattern, patternWorking } from "@/engine/prediction";
import type { Measurement, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { ButtonLink } from "@/ui/button";
import { formatLength } from "@/ui/format-length";
import { Paging } from "@/ui/paging";
import type { PatternDocument } from "@/engine/pattern";
import type { NamedCause } from "@/engine/results";
import type { BoardCell } from "./gap-board";
import type { Asking } from "../asking";
import { carrierSentence } from "../carrier-copy";
import { causeSentence } from "../cause-copy";
import type { OpenedCell } from "./cell-readings";
import { shownSteps } from "./shown-steps";
import { stepScale } from "./step-scale";
import { verdictSentence } from "../verdict-copy";
import { AskCarriers } from "./ask-carriers";
import { CauseMark } from "./cause-mark";
import { TesterSteps } from "./tester-steps";

export interface PanelCall {
  readonly callId: string;
  readonly patternId: string;
  readonly mayEdit: boolean;
}

interface CellPanelProps {
  readonly cell: BoardCell;
  readonly measurement: Measurement;
  readonly pattern: PatternDocument;
  readonly causes: readonly NamedCause[];
  readonly opened: OpenedCell;
  /** Address of the same cell with another page of testers. */
  readonly hrefOfTesters: (page: number) => string;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
  readonly closeHref: string;
  /** Photos of its size's testers, where there are any. */
  readonly photos: ReactNode;
  /** Of testers on whom a finding rests, by id. */
  readonly names: ReadonlyMap<string, string>;
  readonly asking: Asking;
}

/** An open cell: its verdict in a sentence, how it is calculated, its testers from target to reading, and their photos. */
export function CellPanel(props: CellPanelProps) {
  const { cell, measurement, pattern, causes, opened, hrefOfTesters, call, unit, closeHref, photos, names, asking } =
    props;
  const { page, pages } = opened.list;
  const pictures = opened.readings.map((reading) => ({ reading, steps: shownSteps(reading.step, unit) }));
  const scale = stepScale(
    pictures.flatMap(({ steps }) => steps),
    unit,
    measurement.toleranceCm,
  );
  const carriers = carrierSentence(cell.cell.restsOn ?? [], { pattern, names });
  return (
    <section
      data-panel
      tabIndex={-1}
      aria-labelledby="cell-panel-title"
      className="scroll-my-4 px-4 py-5 outline-none sm:px-6"
    >
      <PanelHead
        {...{ cell, measurement, call, unit, closeHref }}
        designCm={designCm(pattern, measurement, cell.size)}
      />
      {carriers === null ? null : (
        <div className="mb-4">
          <p className="max-w-3xl text-sm font-semibold">{carriers}</p>
          <AskCarriers restsOn={cell.cell.restsOn ?? []} measurement={measurement.id} {...{ asking }} />
        </div>
      )}
      {cell.causes.map((number) => {
        const cause = causes[number - 1];
        return cause === undefined ? null : (
          <p key={number} className="numbers mb-3 max-w-3xl text-sm">
            <CauseMark number={number} />{" "}
            <a href={`#cause-${number}`} className="text-link">
              {causeSentence(cause, pattern, unit)}
            </a>
          </p>
        );
      })}
      {pictures.length === 0 ? (
        <p className="text-soft">
          {pages === 1
            ? "Nobody has sent this measurement in this size yet."
            : "None of these testers has sent this measurement."}
        </p>
      ) : (
        <ul className="grid gap-4 md:grid-cols-2 xl:grid-cols-3">
          {pictures.map(({ reading, steps }) => (
            <TesterSteps
              key={`${reading.tester} ${reading.which}`}
              decidesIn={call.mayEdit ? call.callId : null}
              name={reading.name}
              {...{ reading, steps, scale, unit }}
            />
          ))}
        </ul>
      )}
      <Paging label="Pages of testers" {...{ page, pages }} hrefOf={hrefOfTesters} />
      {photos}
    </section>
  );
}

interface PanelHeadProps extends Omit<
  CellPanelProps,
  "pattern" | "causes" | "opened" | "hrefOfTesters" | "photos" | "names" | "asking"
> {
  readonly designCm: number;
}

function PanelHead({ cell, measurement, call, unit, closeHref, designCm }: PanelHeadProps) {
  const { size, key } = cell;
  const testers = cell.cell.reports;
  return (
    <div className="mb-5 flex flex-wrap items-start justify-between gap-x-8 gap-y-3">
      <div className="min-w-0 max-w-3xl">
        <p className="text-sm text-soft [overflow-wrap:anywhere]">
          {measurement.letter} {measurement.label}, size {size.label}
        </p>
        <h3 id="cell-panel-title" className="numbers text-xl">
          {verdictSentence(cell.cell, { measurement, unit, size: size.label })}
        </h3>
        <p className="numbers mt-1 text-sm text-soft">
          The pattern plans {formatLength(designCm, unit)} ±&nbsp;{formatLength(measurement.toleranceCm, unit)}
          {testers === 0 ? "" : `; ${testers} ${testers === 1 ? "report counts" : "reports count"}`}.{" "}
          <Link
            href={`/patterns/${call.patternId}/measurements/${measurement.id}?size=${size.id}`}
            className="text-link"
          >
            See the calculation for {size.label}
          </Link>
        </p>
      </div>
      <div className="flex flex-wrap items-center gap-3">
        {call.mayEdit ? (
          <ButtonLink href={`/calls/${call.callId}/correct?cell=${key}`}>Correct this number</ButtonLink>
        ) : null}
        <ButtonLink href={closeHref} look="quiet">
          Close
        </ButtonLink>
      </div>
    </div>
  );
}

function designCm(pattern: PatternDocument, measurement: Measurement, size: Size): number {
  const index = indexPattern(pattern);
  return measure(index, measurement, patternWorking(index, size.id)).cm;
}

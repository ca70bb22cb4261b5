import Link from "next/link";
import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { fitScaleLabel } from "@/engine/reporting";
import type { LengthUnit } from "@/engine/units";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import type { AreaFinding, FitArea } from "./fit-board";
import { boundsWords, easeWords, fitSentence, rightEaseSentences } from "./fit-copy";
import type { FitAnswer, FitRemarks } from "./fit-data";
import type { PanelCall } from "../gaps/cell-panel";
import { fitTableContent } from "./fit-content";
import { FitTable } from "./fit-table";

interface FitViewProps {
  readonly areas: readonly FitArea[];
  readonly call: PanelCall;
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** One size as a picture. */
  readonly picture: ReactNode;
  /** The comments with their answers, and whether there are more. */
  readonly remarks: FitRemarks;
}

/** How garments fit, beside how they came out: where to change the ease, a picture, every area. */
export function FitView({ areas, call, pattern, unit, picture, remarks }: FitViewProps) {
  const found = areas.flatMap((area) => area.findings.map((finding) => ({ area, finding })));
  return (
    <>
      <div className="mb-8 flex flex-wrap items-end justify-between gap-x-8 gap-y-3">
        <p className="max-w-3xl text-soft">
          What testers say about the fit, and which ease feels right to them. Their answers are compared with the ease
          that each garment really has: the garment as measured, less the body of its tester. If a measurement is
          different from the pattern, fix its counts, edgings or seams. If it comes out as planned and still doesn’t
          fit, change its ease.
        </p>
        <a href={`/calls/${call.callId}/fit.csv`} className="text-link text-sm">
          Download fit notes (CSV)
        </a>
      </div>
      {found.length === 0 ? (
        <p className="mb-8 max-w-4xl font-serif text-xl leading-snug">
          Testers’ answers give no clear reason to change the ease in any size.
        </p>
      ) : (
        <div className="mb-10">
          {found.map(({ area, finding }) => (
            <Finding key={area.id} {...{ finding, area, call, pattern, unit }} />
          ))}
        </div>
      )}
      {picture}
      {areas.map((area) => (
        <Area key={area.id} {...{ area, unit, pattern }} remarks={remarks.shown} />
      ))}
      {remarks.areThereMore ? (
        <p className="mt-4 text-soft">
          There are more comments in the{" "}
          <a href={`/calls/${call.callId}/fit.csv`} className="text-link">
            CSV file
          </a>
          .
        </p>
      ) : null}
    </>
  );
}

/** Shown while nobody has said anything about the fit. */
export function NoFitNotes() {
  return (
    <EmptyState title="No fit notes yet">
      <p>
        Testers can say in their report how the garment fits in each area, from far too tight to far too loose. This
        page shows their answers beside the differences. Where a size comes out as planned and still feels tight, change
        the ease, not the counts. Fit notes don’t affect any other result.
      </p>
    </EmptyState>
  );
}

interface AreaProps extends Pick<FitViewProps, "pattern" | "unit"> {
  readonly area: FitArea;
  readonly remarks: readonly FitAnswer[];
}

function Area({ area, unit, pattern, remarks }: AreaProps) {
  const { label, governing } = area;
  const eases = rightEaseSentences(area, pattern, unit);
  return (
    <Section
      title={`${label} in all sizes`}
      intro={
        governing.length === 0
          ? "No measurement has a target for this area, so there is no difference to compare."
          : `Compared with ${governing.map(({ letter, label: name }) => `${letter} ${name}`).join(", ")}.`
      }
    >
      {eases.length === 0 ? null : <p className="numbers mb-4 max-w-3xl">{eases.join(" ")}</p>}
      <FitTable {...fitTableContent(area, unit)} />
      <Remarks {...{ area, pattern }} remarks={remarks.filter((remark) => remark.area === area.id)} />
    </Section>
  );
}

interface FindingProps extends Omit<FitViewProps, "areas" | "picture" | "remarks"> {
  readonly area: FitArea;
  readonly finding: AreaFinding;
}

function Finding({ finding, area, call, pattern, unit }: FindingProps) {
  const bounds = boundsWords(finding, pattern);
  return (
    <div className="numbers mb-5 max-w-4xl border-l-4 border-thread pl-4">
      <p className="font-serif text-xl leading-snug">{fitSentence(finding, area, pattern)}</p>
      <p className="mt-1 text-soft">
        {bounds === null ? null : `${bounds} `}
        {easeWords(finding, { area, pattern, unit })}{" "}
        {call.mayEdit ? (
          <Link href={`/patterns/${call.patternId}/edit`} className="text-link">
            Change it in the pattern
          </Link>
        ) : null}
      </p>
    </div>
  );
}

function Remarks({ area, pattern, remarks }: Omit<AreaProps, "unit">) {
  if (remarks.length === 0) return null;
  const labels = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  return (
    <>
      <h3 className="mb-2 mt-5">Comments</h3>
      <ul className="grid gap-x-8 gap-y-2 md:grid-cols-2">
        {remarks.map(({ tester, name, size, scale, says }) => (
          <li key={tester} className="wrap-anywhere">
            “{says}”{" "}
            <span className="text-sm text-soft">
              {name}, {labels.get(size) ?? size}, {fitScaleLabel(scale, area)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

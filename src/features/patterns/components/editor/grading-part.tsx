"use client";

import { Section } from "@/ui/section";
import { FinishedTable } from "../finished-table";
import { SanityList } from "../sanity-list";
import { EaseTable } from "./ease-table";
import { useEditing } from "./editing";
import { GradingTable } from "./grading-table";
import { NothingToGrade } from "./nothing-to-grade";
import { SolvePanel } from "./solve-panel";
import type { Solve } from "./use-solve";

/** All counts in all sizes, solved or typed, and what they come to. */
export function GradingPart({ solve }: { readonly solve: Solve }) {
  const { pattern, readable, unit } = useEditing();
  if (pattern.counts.length === 0 || pattern.sizes.length === 0) return <NothingToGrade />;
  return (
    <>
      <Section
        title="Counts in every size"
        intro="Type a number, or have all that is not locked solved: whole stitches and rows that keep every rule and come as near to the targets as can be."
      >
        <SolvePanel {...solve} />
        <GradingTable />
      </Section>
      {readable !== null && readable.measurements.length > 0 ? (
        <Section title="What each measurement becomes">
          <FinishedTable pattern={readable} unit={unit} />
        </Section>
      ) : null}
      {readable === null ? (
        <p className="mb-10 text-soft">
          There is nothing to reckon with yet: a fabric with its gauge and a size with its body come first.
        </p>
      ) : (
        <>
          <EaseTable pattern={readable} unit={unit} />
          <SanityList pattern={readable} unit={unit} />
        </>
      )}
    </>
  );
}

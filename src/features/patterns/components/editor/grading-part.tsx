"use client";

import { useDeferredValue, useMemo } from "react";
import { Section } from "@/ui/section";
import { FinishedTable } from "../finished-table";
import { SanityList } from "../sanity-list";
import { EaseTable } from "./ease-table";
import { useEditing, useEditingValue } from "./editing";
import { GradingTable } from "./grading-table";
import { NothingToGrade } from "./nothing-to-grade";
import { SolvePanel } from "./solve-panel";
import type { Solve } from "./use-solve";

/** All counts in all sizes, solved or typed, and what they come to. */
export function GradingPart({ solve }: { readonly solve: Solve }) {
  const isEmpty = useEditingValue(({ pattern }) => pattern.counts.length === 0 || pattern.sizes.length === 0);
  if (isEmpty) return <NothingToGrade />;
  return (
    <>
      <Section
        title="Counts in every size"
        intro="Type a number, or have all that is not locked solved: whole stitches and rows that keep every rule and come as near to the targets as can be."
      >
        <SolvePanel {...solve} />
        <GradingTable />
      </Section>
      <Outcome />
    </>
  );
}

/** What the numbers come to. These tables are large: a key that is pressed while they are drawn goes first. */
function Outcome() {
  const { readable: newest, unit } = useEditing("readable", "unit");
  const readable = useDeferredValue(newest);
  return useMemo(
    () =>
      readable === null ? (
        <p className="mb-10 text-soft">
          There is nothing to calculate with yet: a fabric with its gauge and a size with its body come first.
        </p>
      ) : (
        <>
          {readable.measurements.length > 0 ? (
            <Section title="What each measurement becomes">
              <FinishedTable pattern={readable} unit={unit} isLive />
            </Section>
          ) : null}
          <EaseTable pattern={readable} unit={unit} />
          <SanityList pattern={readable} unit={unit} />
        </>
      ),
    [readable, unit],
  );
}

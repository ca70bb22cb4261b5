"use client";

import { useDeferredValue, useMemo } from "react";
import { Section } from "@/ui/section";
import { FinishedTable } from "../components/finished-table";
import { SanityList } from "../components/sanity-list";
import { EaseTable } from "./ease-table";
import { useEditing, useEditingValue } from "./editing";
import { GradingTable } from "./grading-table";
import { MeasuredBeside } from "./measured-beside";
import { NothingToGrade } from "./nothing-to-grade";
import { SolvePanel } from "./solve-panel";
import type { Solve } from "./use-solve";

/** All counts in all sizes, calculated or typed, and the measurements they give. */
export function GradingPart({ solve }: { readonly solve: Solve }) {
  const isEmpty = useEditingValue(({ pattern }) => pattern.counts.length === 0 || pattern.sizes.length === 0);
  if (isEmpty) return <NothingToGrade />;
  return (
    <>
      <Section
        title="Counts in every size"
        intro="Type numbers, or calculate everything that is not locked: whole stitches and rows that meet every rule and come as close to the targets as possible."
      >
        <SolvePanel {...solve} />
        <div className="grid gap-6 xl:grid-cols-[minmax(0,1fr)_17rem]">
          <div className="min-w-0">
            <GradingTable />
          </div>
          <MeasuredBeside />
        </div>
      </Section>
      <Outcome />
    </>
  );
}

/** The resulting measurements. These tables are large, so typing has priority over drawing them. */
function Outcome() {
  const { readable: newest, unit } = useEditing("readable", "unit");
  const readable = useDeferredValue(newest);
  return useMemo(
    () =>
      readable === null ? (
        <p className="mb-10 text-soft">
          Nothing to calculate yet. First add a fabric with its gauge and a size with its body measurements.
        </p>
      ) : (
        <>
          {readable.measurements.length > 0 ? (
            <Section title="Resulting measurements">
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

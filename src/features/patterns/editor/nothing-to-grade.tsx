"use client";

import { EmptyState } from "@/ui/empty-state";
import { useEditing } from "./editing";
import { stayOnPage } from "./part-links";

/** What is needed before grading, each step with a link to its part. */
export function NothingToGrade() {
  const { pattern } = useEditing("pattern");
  const steps = [
    { part: "sizes", label: "Sizes", says: "the body measurements they are made for", done: pattern.sizes.length > 0 },
    { part: "fabrics", label: "Fabrics", says: "the gauge of each fabric", done: pattern.fabrics.length > 0 },
    { part: "counts", label: "Counts and sums", says: "the stitches and rows of the pattern", done: false },
    {
      part: "measurements",
      label: "Measurements",
      says: "how they are calculated, and their targets",
      done: pattern.measurements.length > 0,
    },
  ];
  return (
    <EmptyState title="Nothing to grade yet">
      <p>Add these four in any order, then calculate every size at once.</p>
      <ol className="mx-auto mt-5 grid max-w-md gap-2 text-left">
        {steps.map(({ part, label, says, done }) => (
          <li key={part} className="flex gap-2">
            <span aria-hidden="true">{done ? "✓" : "○"}</span>
            <span>
              <a href={`?part=${part}`} onClick={stayOnPage} className="text-link font-semibold">
                {label}
              </a>
              : {says}
              {done ? <span className="sr-only"> (done)</span> : null}
            </span>
          </li>
        ))}
      </ol>
    </EmptyState>
  );
}

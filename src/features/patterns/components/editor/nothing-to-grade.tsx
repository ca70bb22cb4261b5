"use client";

import { EmptyState } from "@/ui/empty-state";
import { useEditing } from "./editing";
import { stayOnPage } from "./part-links";

/** What has to be there before there is anything to grade, each step leading to its part. */
export function NothingToGrade() {
  const { pattern } = useEditing("pattern");
  const steps = [
    { part: "sizes", label: "Sizes", says: "the bodies it is made for", done: pattern.sizes.length > 0 },
    { part: "fabrics", label: "Fabrics", says: "the gauge of each", done: pattern.fabrics.length > 0 },
    { part: "counts", label: "Counts and sums", says: "the stitches and rows it tells people to work", done: false },
    {
      part: "measurements",
      label: "Measurements",
      says: "what they come to, and what they should",
      done: pattern.measurements.length > 0,
    },
  ];
  return (
    <EmptyState title="Nothing to grade yet">
      <p>Four things stand before it, in any order; then every size is worked out at once.</p>
      <ol className="mx-auto mt-5 grid max-w-md gap-2 text-left">
        {steps.map(({ part, label, says, done }) => (
          <li key={part} className="flex gap-2">
            <span aria-hidden="true">{done ? "✓" : "○"}</span>
            <span>
              <a href={`?part=${part}`} onClick={stayOnPage} className="text-link font-semibold">
                {label}
              </a>
              : {says}
              {done ? <span className="sr-only"> (there is one)</span> : null}
            </span>
          </li>
        ))}
      </ol>
    </EmptyState>
  );
}

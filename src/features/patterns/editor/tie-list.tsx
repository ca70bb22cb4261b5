"use client";

import type { DraftPattern } from "@/engine/editing";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { TieRow } from "./tie-row";

type DraftTie = DraftPattern["ties"][number];

const EXACT: DraftTie = { count: "", equals: [{ times: 1, count: "" }] };
/** 3 stitches for 4 rows, as near as whole stitches allow (a common rate, see docs/method.md). */
const PICK_UP: DraftTie = { count: "", per: 4, equals: [{ times: 3, count: "" }], within: 2 };

/** Sums that must match, across pieces and fabrics. */
export function TieList() {
  const { pattern, change } = useEditing("pattern", "change");
  const add = (tie: DraftTie) => change((now) => ({ ...now, ties: [...now.ties, tie] }), null);
  return (
    <Section
      title="Must add up"
      intro="Counts that must match at a seam, join or edge, exactly or within a number you allow. Stitches picked up along rows match at a rate, such as 3 stitches for 4 rows."
    >
      {pattern.ties.length === 0 ? <p className="mb-4 text-soft">No sums yet.</p> : null}
      <ol className="mb-4 grid gap-3">
        {pattern.ties.map((tie, index) => (
          <TieRow key={index} tie={tie} i={index} />
        ))}
      </ol>
      <div className="flex flex-wrap gap-3">
        <AddButton label="A sum" onAdd={() => add(EXACT)} />
        <AddButton label="A pick-up rate" onAdd={() => add(PICK_UP)} />
      </div>
    </Section>
  );
}

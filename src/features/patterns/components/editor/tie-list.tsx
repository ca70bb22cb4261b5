"use client";

import type { DraftPattern } from "@/engine/editing";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { TieRow } from "./tie-row";

type DraftTie = DraftPattern["ties"][number];

const EXACT: DraftTie = { count: "", equals: [{ times: 1, count: "" }] };
/** 3 stitches for 4 rows (common practice, no source), as near as whole stitches come. */
const PICK_UP: DraftTie = { count: "", per: 4, equals: [{ times: 3, count: "" }], within: 2 };

/** What must add up, across pieces and fabrics. */
export function TieList() {
  const { pattern, change } = useEditing("pattern", "change");
  const add = (tie: DraftTie) => change((now) => ({ ...now, ties: [...now.ties, tie] }), null);
  return (
    <Section
      title="Must add up"
      intro="Counts that meet at a seam, a join or an edge: exactly, or as near as you allow. Stitches that are picked up along rows meet at a rate, as 3 stitches for 4 rows."
    >
      {pattern.ties.length === 0 ? <p className="mb-4 text-soft">Nothing has to meet yet.</p> : null}
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

"use client";

import { Section } from "@/ui/section";
import { EmptyState } from "@/ui/empty-state";
import { AddNamed } from "./add-named";
import { CountRow } from "./count-row";
import { useEditing } from "./editing";
import { GridArea } from "./grid-area";
import { withNewCount, withPastedCounts } from "./paste-counts";
import { TieList } from "./tie-list";

/** The pattern's counts and their rules, and what must add up. */
export function CountsPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const add = (direction: "stitches" | "rows") => (label: string) =>
    change((now) => withNewCount(now, label, direction), null);
  return (
    <>
      <Section
        title="Counts"
        intro="Each number of stitches or rows in the pattern, with its rules. Enter or calculate its number for every size under “Grading”. From one size to the next a count stays the same or grows, unless you allow it to get smaller."
      >
        {pattern.counts.length === 0 ? (
          <div className="mb-4">
            <EmptyState title="No counts yet">
              <p>Start with the stitches around the body, then the rows from hem to underarm.</p>
            </EmptyState>
          </div>
        ) : null}
        <GridArea
          onBlock={(block, row, column) => change((now) => withPastedCounts(now, block, { row, column }), null)}
        >
          <ol className="mb-4 grid gap-3">
            {pattern.counts.map((count, i) => (
              <CountRow key={count.id} count={count} index={i} />
            ))}
          </ol>
        </GridArea>
        <div className="flex flex-wrap gap-x-8 gap-y-4">
          <AddNamed what="count of stitches" placeholder="such as Body stitches" onAdd={add("stitches")} />
          <AddNamed what="count of rows" placeholder="such as Rows to underarm" onAdd={add("rows")} />
        </div>
      </Section>
      <TieList />
    </>
  );
}

"use client";

import { useState } from "react";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { AddNamed } from "./add-named";
import { bodyRows, withNewBody, withNewSize } from "./body-rows";
import { useEditing } from "./editing";
import { PublishedSizes } from "./published-sizes";
import { SaidBelow } from "./said-below";
import { SizeTable } from "./size-table";
import { TakenOutNote, type TakenOut } from "./taken-out";

/** The sizes and the bodies that they are made for. */
export function SizesPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const [takenOut, setTakenOut] = useState<TakenOut | null>(null);
  const rows = bodyRows(pattern);
  return (
    <Section
      title="Sizes"
      intro="The body measurements each size is made for, without ease. List the smallest size first; one body measurement orders the sizes. Small numbers are the step from the size before."
    >
      <PublishedSizes />
      {pattern.sizes.length === 0 && rows.length === 0 ? (
        <div className="mb-5">
          <EmptyState title="No sizes yet">
            <p>Add your smallest size and a body measurement that orders the sizes, such as the bust.</p>
          </EmptyState>
        </div>
      ) : (
        <SizeTable rows={rows} onTakenOut={setTakenOut} />
      )}
      <div className="mb-4">
        <SaidBelow id="sizes" path="sizes" />
        <SaidBelow id="size-by" path="sizeBy" />
      </div>
      <TakenOutNote last={takenOut} items={[...pattern.sizes, ...rows]} />
      <div className="flex flex-wrap gap-x-8 gap-y-4">
        <AddNamed
          what="size"
          placeholder="such as 3X"
          onAdd={(label) => change((now) => withNewSize(now, label), null)}
        />
        <AddNamed
          what="body measurement"
          placeholder="such as Upper arm"
          onAdd={(label) => change((now) => withNewBody(now, label), null)}
        />
      </div>
    </Section>
  );
}

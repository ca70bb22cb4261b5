"use client";

import { useState } from "react";
import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { AddNamed } from "./add-named";
import { useEditing } from "./editing";
import { FabricCard } from "./fabric-card";
import { removeItem } from "./list-items";
import { SaidBelow } from "./said-below";
import { TakenOutNote, type TakenOut } from "./taken-out";
import { usesOfFabric } from "./uses";

/** Each stitch pattern with its needle or hook and its gauge. */
export function FabricsPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const [takenOut, setTakenOut] = useState<TakenOut | null>(null);
  const { fabrics } = pattern;
  const remove = (index: number, id: string, label: string) => {
    change((now) => ({ ...now, fabrics: removeItem(now.fabrics, index) }), null);
    setTakenOut({ id, name: label, uses: usesOfFabric(pattern, id) });
  };
  return (
    <Section
      title="Fabrics"
      intro="A fabric is one stitch pattern with one needle or hook size and its stated gauge, washed. A rib or edging with its own gauge is a separate fabric."
    >
      {fabrics.length === 0 ? (
        <div className="mb-5">
          <EmptyState title="No fabrics yet">
            <p>Start with the main fabric of the garment and the gauge of your washed swatch.</p>
          </EmptyState>
        </div>
      ) : null}
      <ol className="mb-4 grid grid-cols-1 gap-5">
        {fabrics.map((fabric, i) => (
          <FabricCard key={fabric.id} fabric={fabric} index={i} onRemove={() => remove(i, fabric.id, fabric.label)} />
        ))}
      </ol>
      <div className="mb-4">
        <SaidBelow id="fabrics" path="fabrics" />
      </div>
      <TakenOutNote last={takenOut} items={fabrics} />
      <AddNamed
        what="fabric"
        placeholder="such as Rib"
        onAdd={(label) => change((now) => withNewFabric(now, label), null)}
      />
    </Section>
  );
}

function withNewFabric(pattern: DraftPattern, label: string): DraftPattern {
  const id = uniqueSlug(label, new Set(pattern.fabrics.map((fabric) => fabric.id)));
  const fabric = { id, label, toolMm: "", gauge: { stitches: "", rows: "" } };
  return { ...pattern, fabrics: [...pattern.fabrics, fabric] };
}

"use client";

import type { WorkedDraft } from "@/engine/editing";
import type { SeamFault } from "@/engine/garment";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { ChoiceField } from "./fields";
import { edgesOf, type DraftGarment } from "./draft-garment";
import { AddButton, ItemButtons } from "./item-buttons";
import { removeItem, replaceItem } from "./list-items";

type DraftSeam = DraftGarment["seams"][number];

/** Edges that are sewn together; what does not fit is said below them, with the sizes. */
export function SeamList({ worked }: { readonly worked: WorkedDraft | null }) {
  const { pattern, change } = useEditing("pattern", "change");
  const { seams } = pattern.garment;
  const set = (next: (seams: DraftGarment["seams"]) => DraftGarment["seams"]) =>
    change((now) => ({ ...now, garment: { ...now.garment, seams: next(now.garment.seams) } }), null);
  if (edgesOf(pattern.garment).length < 2) return null;
  return (
    <Section
      title="Seams"
      intro="Edges that are sewn together. They have to be about as long as each other: up to 2 % is eased in."
    >
      <ol className="mb-4 grid gap-3">
        {seams.map((seam, index) => (
          <SeamRow
            key={index}
            {...{ seam, index }}
            faults={worked?.seams.filter((fault) => fault.seam === index) ?? []}
            onSeam={(next) => set((now) => replaceItem(now, index, next))}
            onRemove={() => set((now) => removeItem(now, index))}
          />
        ))}
      </ol>
      <AddButton label="A seam" onAdd={() => set((now) => [...now, { a: { edge: "" }, b: { edge: "" } }])} />
    </Section>
  );
}

interface SeamRowProps {
  readonly seam: DraftSeam;
  readonly index: number;
  readonly faults: readonly SeamFault[];
  readonly onSeam: (seam: DraftSeam) => void;
  readonly onRemove: () => void;
}

function SeamRow({ seam, index, faults, onSeam, onRemove }: SeamRowProps) {
  const { pattern } = useEditing("pattern");
  const edges = edgesOf(pattern.garment).map((edge) => ({ value: edge, label: edge }));
  const labelOf = (id: string) => pattern.sizes.find((size) => size.id === id)?.label ?? id;
  return (
    <li className="rounded-sheet border border-line bg-sheet px-4 py-3 shadow-sheet">
      <div className="flex flex-wrap items-end gap-x-4 gap-y-2">
        {(["a", "b"] as const).map((side) => (
          <div key={side} className="w-56 max-w-full">
            <ChoiceField
              at={["garment", "seams", index, side, "edge"]}
              label={side === "a" ? "Edge" : "sewn to"}
              value={seam[side].edge}
              choices={edges}
              onChoice={(edge) => onSeam({ ...seam, [side]: { ...seam[side], edge } })}
            />
          </div>
        ))}
        <ItemButtons name={`seam ${index + 1}`} onRemove={onRemove} />
      </div>
      <div aria-live="polite" className="text-sm">
        {faults.map(({ size, message }) => (
          <p key={size} className="mt-1 font-semibold text-thread">
            ▲ {labelOf(size)}: {message}
          </p>
        ))}
      </div>
    </li>
  );
}

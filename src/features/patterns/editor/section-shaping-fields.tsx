"use client";

import type { PathPart } from "@/engine/pattern";
import type { RowNoun } from "@/engine/shaping";
import { ChoiceField, NumberField, TickField } from "./fields";
import type { DraftSection } from "./piece-edit";

const EDGES = [
  { value: "both", label: "each side" },
  { value: "left", label: "left edge" },
  { value: "right", label: "right edge" },
] as const;

const NEW_SHAPING = { stitches: 1, edges: "both" } as const;

interface SectionShapingFieldsProps {
  readonly at: readonly PathPart[];
  readonly section: DraftSection;
  readonly noun: RowNoun;
  readonly onSection: (section: DraftSection, field: string | null) => void;
}

/** How a section changes from its first stitch count to its last. */
export function SectionShapingFields({ at, section, noun, onSection }: SectionShapingFieldsProps) {
  const { shaping, ...straight } = section;
  const path = [...at, "shaping"];
  const set = (next: NonNullable<DraftSection["shaping"]>, field: string | null) =>
    onSection({ ...straight, shaping: next }, field && `shaping.${field}`);
  return (
    <div className="flex flex-wrap items-start gap-x-4 gap-y-2">
      <TickField
        label="shaped"
        checked={shaping !== undefined}
        onTick={(ticked) => onSection(ticked ? { ...straight, shaping: NEW_SHAPING } : straight, null)}
      />
      {shaping === undefined ? null : (
        <>
          <NumberField
            at={[...path, "stitches"]}
            label="Stitches at a time"
            labelled="aloud"
            className="w-14"
            behind="at a time,"
            value={shaping.stitches}
            onText={(stitches) => set({ ...shaping, stitches }, "stitches")}
          />
          <ChoiceField
            at={[...path, "edges"]}
            label="Shaped edges"
            labelled="aloud"
            className="w-34"
            value={shaping.edges}
            choices={EDGES}
            onChoice={(value) =>
              set({ ...shaping, edges: EDGES.find((each) => each.value === value)?.value ?? "both" }, null)
            }
          />
          <TickField
            label={`only in every other ${noun}`}
            checked={shaping.everyOther ?? false}
            onTick={(ticked) => {
              const { everyOther: _before, ...rest } = shaping;
              set(ticked ? { ...rest, everyOther: true } : rest, null);
            }}
          />
        </>
      )}
    </div>
  );
}

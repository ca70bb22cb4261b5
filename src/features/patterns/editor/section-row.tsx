"use client";

import type { PathPart } from "@/engine/pattern";
import type { RowNoun, SizedSection } from "@/engine/shaping";
import { useEditing } from "./editing";
import { ChoiceField } from "./fields";
import { ItemButtons } from "./item-buttons";
import type { DraftSection } from "./piece-edit";
import { SectionSummary } from "./section-summary";
import { SectionShapingFields } from "./section-shaping-fields";

interface SectionRowProps {
  readonly at: readonly PathPart[];
  readonly section: DraftSection;
  /** From 1. */
  readonly number: number;
  readonly noun: RowNoun;
  /** How it is worked in every size; undefined while it cannot be read. */
  readonly sized: readonly SizedSection[] | undefined;
  readonly onSection: (section: DraftSection, field: string | null) => void;
  readonly onUp?: () => void;
  readonly onDown?: () => void;
  readonly onRemove: () => void;
}

/** One section: its stitches at both ends, its rows, its shaping, and how it is worked in the chosen size. */
export function SectionRow({ at, section, number, noun, sized, onSection, ...move }: SectionRowProps) {
  const { size } = useEditing("size");
  const inSize = sized?.find((entry) => entry.size === size);
  const isWrong = inSize?.shaping.status === "fault" || inSize?.shaping.status === "unsaid";
  return (
    <li className={`rounded-md border-l-4 bg-paper px-4 py-3 ${isWrong ? "border-thread" : "border-line-strong"}`}>
      <div className="flex items-center justify-between gap-3">
        <h5 className="text-sm font-semibold">Section {number}</h5>
        <ItemButtons name={`section ${number}`} {...move} />
      </div>
      <div className="grid gap-3">
        <SectionCounts at={at} section={section} noun={noun} onSection={onSection} />
        <SectionShapingFields at={at} section={section} noun={noun} onSection={onSection} />
        <SectionYarn at={at} section={section} onSection={onSection} />
      </div>
      <SectionSummary sized={sized} noun={noun} />
    </li>
  );
}

type FieldsProps = Pick<SectionRowProps, "at" | "section" | "onSection">;

function SectionCounts({ at, section, noun, onSection }: FieldsProps & Pick<SectionRowProps, "noun">) {
  const { pattern } = useEditing("pattern");
  const choices = (direction: "stitches" | "rows", chosen: string) =>
    pattern.counts
      .filter((count) => count.direction === direction || count.id === chosen)
      .map(({ id, label }) => ({ value: id, label: label || id }));
  return (
    <div className="grid gap-x-4 gap-y-3 sm:grid-cols-2">
      <ChoiceField
        at={[...at, "from"]}
        label="Stitches at the start"
        value={section.from}
        choices={choices("stitches", section.from)}
        onChoice={(from) => onSection({ ...section, from, to: section.to === "" ? from : section.to }, null)}
      />
      <ChoiceField
        at={[...at, "to"]}
        label="Stitches at the end"
        value={section.to}
        choices={choices("stitches", section.to)}
        onChoice={(to) => onSection({ ...section, to }, null)}
      />
      <ChoiceField
        at={[...at, "rows"]}
        label={`over ${noun}s`}
        value={section.rows}
        choices={choices("rows", section.rows)}
        onChoice={(rows) => onSection({ ...section, rows }, null)}
      />
    </div>
  );
}

function SectionYarn({ at, section, onSection }: FieldsProps) {
  const { pattern } = useEditing("pattern");
  const { yarn = "", ...rest } = section;
  if (pattern.yarns.length < 2 && yarn === "") return null;
  return (
    <div className="w-64 max-w-full">
      <ChoiceField
        at={[...at, "yarn"]}
        label="Yarn"
        value={yarn}
        nothing="the piece's own"
        choices={pattern.yarns.map(({ id, label }) => ({ value: id, label: label || id }))}
        onChoice={(id) => onSection(id === "" ? rest : { ...rest, yarn: id }, null)}
      />
    </div>
  );
}

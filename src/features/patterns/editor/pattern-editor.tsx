"use client";

import { useState, type KeyboardEvent, type ReactNode } from "react";
import { Button } from "@/ui/button";
import { ChangeList } from "../components/change-list";
import { EditingProvider, useEditing } from "./editing";
import type { EditingStart } from "./editing-store";
import type { EditorPart } from "./editor-parts";
import { GradingPart } from "./grading-part";
import { SizesPart } from "./sizes-part";
import { FabricsPart } from "./fabrics-part";
import { CountsPart } from "./counts-part";
import { LengthsPart } from "./lengths-part";
import { MeasurementsPart } from "./measurements-part";
import { PiecesPart } from "./pieces-part";
import { TextPart } from "./text-part";
import { PartLinks, usePart } from "./part-links";
import { SaveBar } from "./save-bar";
import { useSolve, type Solve, type GradingActions } from "./use-solve";

/** The whole pattern as inputs, saved as a draft while the designer types. */
export function PatternEditor({ gradings, ...start }: EditingStart & { readonly gradings: GradingActions }) {
  return (
    <EditingProvider {...start}>
      <EditorFrame gradings={gradings} />
    </EditingProvider>
  );
}

const PARTS: Readonly<Record<EditorPart, (props: { readonly solve: Solve }) => ReactNode>> = {
  grading: GradingPart,
  sizes: SizesPart,
  fabrics: FabricsPart,
  counts: CountsPart,
  lengths: LengthsPart,
  measurements: MeasurementsPart,
  pieces: PiecesPart,
  text: TextPart,
};

function EditorFrame({ gradings }: { readonly gradings: GradingActions }) {
  const { undo, redo } = useEditing("undo", "redo");
  const solve = useSolve(gradings);
  const part = usePart();
  const Part = PARTS[part];
  const onKeyDown = (event: KeyboardEvent) => {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || (key !== "z" && key !== "y")) return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) redo();
    else undo();
  };
  return (
    <div onKeyDown={onKeyDown}>
      <div className="gap-8 lg:grid lg:grid-cols-[12.5rem_minmax(0,1fr)]">
        <PartLinks />
        <div className="min-w-0">
          <EditorHead />
          <Part key={part} solve={solve} />
        </div>
      </div>
      <Changed />
      <SaveBar />
    </div>
  );
}

function EditorHead() {
  const { unit, undo, redo, canUndo, canRedo } = useEditing("unit", "undo", "redo", "canUndo", "canRedo");
  return (
    <div className="mb-6 flex flex-wrap items-start justify-between gap-x-6 gap-y-3">
      <p className="max-w-2xl text-sm text-soft">
        Lengths are in {unit === "in" ? "inches" : "centimetres"} unless you add a unit: 38.5, 38,5 and 12 3/8 in all
        work. Your edits are saved as you type; others see them once you save a revision. You can paste cells from a
        spreadsheet into any table.
      </p>
      <div className="flex gap-2">
        <Button look="quiet" disabled={!canUndo} onClick={undo} title="Ctrl Z">
          Undo
        </Button>
        <Button look="quiet" disabled={!canRedo} onClick={redo} title="Ctrl Shift Z">
          Redo
        </Button>
      </div>
    </div>
  );
}

function Changed() {
  const { unit, baseNumber, changes } = useEditing("unit", "baseNumber", "changes");
  const [isOpen, setOpen] = useState(false);
  if (changes.length === 0) return null;
  return (
    <details
      className="mb-8 rounded-sheet border border-line bg-sheet px-5 py-3"
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary className="min-h-8 font-semibold">Changes since revision {baseNumber}</summary>
      {isOpen ? (
        <div className="mt-3">
          <ChangeList changes={changes} unit={unit} />
        </div>
      ) : null}
    </details>
  );
}

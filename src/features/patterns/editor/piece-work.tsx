"use client";

import { useState } from "react";
import type { WorkedDraft } from "@/engine/editing";
import { roundParts, stepsOfPiece } from "@/engine/pattern";
import { AddStep } from "./add-step";
import { useEditing } from "./editing";
import {
  withoutStep,
  withStep,
  withStepAt,
  withSteps,
  type DraftGarment,
  type DraftPiece,
  type NewStep,
} from "./draft-garment";
import { PieceInNumbers } from "./piece-in-numbers";
import { SideEdges } from "./side-edges";
import { StepRow } from "./step-row";

interface PieceWorkProps {
  readonly piece: DraftPiece;
  readonly worked: WorkedDraft | null;
}

/** The steps of a piece in the order they are worked, with the schematic growing beside them. */
export function PieceWork({ piece, worked }: PieceWorkProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const { garment } = pattern;
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const steps = stepsOfPiece(garment, piece.id);
  const own = worked?.pieces.find((each) => each.piece.id === piece.id);
  const rounds = roundParts(garment);
  const edit = (next: (now: DraftGarment) => DraftGarment, field: string | null) =>
    change((now) => ({ ...now, garment: next(now.garment) }), field);
  const add = (added: readonly NewStep[]) => {
    const known = new Set(garment.steps.map(({ id }) => id));
    const grown = withSteps(garment, piece.id, added);
    setOpened(new Set(grown.steps.filter(({ id }) => !known.has(id)).map(({ id }) => id)));
    edit((now) => withSteps(now, piece.id, added), null);
  };
  const toggle = (id: string) =>
    setOpened((now) => new Set(now.has(id) ? [...now].filter((each) => each !== id) : [...now, id]));
  const moveTo = (id: string, place: string | undefined) =>
    place === undefined ? undefined : () => edit((now) => withStepAt(now, id, place), null);
  const head = `steps-${piece.id}`;
  const namesPart = new Set(steps.map((step) => step.in.part)).size > 1;
  return (
    <section aria-labelledby={head}>
      <h4 id={head} className="font-serif text-lg font-semibold">
        How it is worked
      </h4>
      <p className="mb-3 text-sm text-soft">
        {steps.length === 0
          ? "Begin with how the stitches come onto the needle or hook."
          : "Step by step, in order. Open a step to change it."}
      </p>
      <div className="grid gap-x-8 gap-y-6 xl:grid-cols-[minmax(0,1fr)_20rem]">
        <div className="min-w-0">
          <ol className="grid gap-2">
            {steps.map((step, index) => (
              <StepRow
                key={step.id}
                {...{ step, namesPart }}
                noun={rounds.has(step.in.part) ? "round" : "row"}
                index={garment.steps.indexOf(step)}
                number={index + 1}
                isOpen={opened.has(step.id)}
                worked={own?.steps.find((each) => each.step.id === step.id)}
                onToggle={() => toggle(step.id)}
                onStep={(next, field) => edit((now) => withStep(now, next), field)}
                onUp={moveTo(step.id, steps[index - 1]?.id)}
                onDown={moveTo(step.id, steps[index + 1]?.id)}
                onRemove={() => edit((now) => withoutStep(now, step.id), null)}
                onDrop={(dropped) => edit((now) => withStepAt(now, dropped, step.id), null)}
              />
            ))}
          </ol>
          <AddStep piece={piece} isBegun={steps.length > 0} onSteps={add} />
          <SideEdges piece={piece} />
        </div>
        {worked ? <PieceInNumbers worked={worked} piece={piece} /> : null}
      </div>
    </section>
  );
}

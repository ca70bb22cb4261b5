"use client";

import { useId, type DragEvent } from "react";
import type { StepInSizes } from "@/engine/garment";
import type { RowNoun } from "@/engine/shaping";
import { formatPath } from "@/engine/pattern";
import { useEditing, useEditingValue } from "./editing";
import type { DraftStep } from "./draft-garment";
import { ItemButtons } from "./item-buttons";
import { StepFields } from "./step-fields";
import { stepSentence } from "./step-sentence";
import { StepOutcome } from "./step-outcome";

export interface StepRowProps {
  readonly step: DraftStep;
  /** Its index in the garment. */
  readonly index: number;
  /** From 1, in the piece. */
  readonly number: number;
  readonly noun: RowNoun;
  readonly isOpen: boolean;
  /** Whether the piece has several parts, so that it matters which the step is worked in. */
  readonly namesPart: boolean;
  /** In every size; undefined while it cannot be read. */
  readonly worked: StepInSizes | undefined;
  readonly onToggle: () => void;
  readonly onStep: (step: DraftStep, field: string | null) => void;
  readonly onUp?: () => void;
  readonly onDown?: () => void;
  readonly onRemove: () => void;
  /** A step was dropped here, by its id. */
  readonly onDrop: (dropped: string) => void;
}

const STEP_DRAGGED = "application/x-sizewright-step";

/** One step: in a sentence with its numbers in every size, and what is on the needle after it; open, its inputs. */
export function StepRow({
  step,
  index,
  number,
  noun,
  isOpen,
  namesPart,
  worked,
  onToggle,
  onStep,
  ...move
}: StepRowProps) {
  const { pattern } = useEditing("pattern");
  const { onDrop, ...buttons } = move;
  const id = useId();
  const path = ["garment", "steps", index] as const;
  const start = formatPath(path);
  const unread = useEditingValue(({ faults }) => [...faults.keys()].filter((key) => key.startsWith(start)).length);
  const isWrong = unread > 0 || (worked?.sizes.some(({ status }) => status === "fault") ?? false);
  const onDragOver = (event: DragEvent) => {
    if (event.dataTransfer.types.includes(STEP_DRAGGED)) event.preventDefault();
  };
  return (
    <li
      className={`rounded-md border-l-4 bg-paper py-1 pl-3 pr-1 ${isWrong ? "border-thread" : "border-line-strong"}`}
      onDragOver={onDragOver}
      onDrop={(event) => onDrop(event.dataTransfer.getData(STEP_DRAGGED))}
    >
      <div className="flex flex-wrap items-center justify-end gap-x-2 sm:flex-nowrap">
        <span
          draggable
          aria-hidden="true"
          title="Drag to move"
          className="hidden cursor-grab select-none px-1 text-soft sm:inline"
          onDragStart={(event) => event.dataTransfer.setData(STEP_DRAGGED, step.id)}
        >
          ⠿
        </span>
        <h5 className="min-w-0 flex-1 basis-52 font-sans text-base font-normal">
          <button
            type="button"
            aria-expanded={isOpen}
            aria-controls={id}
            onClick={onToggle}
            className="numbers flex min-h-11 w-full items-center gap-2 text-left hover:text-thread"
          >
            <span className="text-soft">{number}.</span>
            <span className="min-w-0 wrap-anywhere">
              {namesPart ? <span className="text-soft">{step.in.part}: </span> : null}
              {stepSentence(pattern, step, noun)}
            </span>
          </button>
        </h5>
        <ItemButtons name={`step ${number}`} {...buttons} />
      </div>
      <div id={id} hidden={!isOpen}>
        {isOpen ? (
          <div className="pb-3 pr-3 pt-1">
            <StepFields at={path} step={step} noun={noun} onStep={onStep} />
          </div>
        ) : null}
      </div>
      <StepOutcome worked={worked} unread={isOpen ? 0 : unread} step={step} />
    </li>
  );
}

"use client";

import { useMemo, useState } from "react";
import { gradedMeasurements, type GradeChoices, type GradingChoice } from "@/engine/grading";
import type { PatternDocument } from "@/engine/pattern";
import { SizedChangeTable } from "@/features/patterns/compare/sized-change-table";
import { comparedSizes, sizedChanges } from "@/features/patterns/compare/sized-changes";
import { Button } from "@/ui/button";
import { useEditing } from "./editing";
import { withGrading } from "./grading-numbers";
import { answerWords, choiceValueText, choiceWords, CLOSEST, isWithin, MOST_EVEN } from "./solved-copy";
import { TradeOffPicture } from "./trade-off-picture";

interface SolvedChoicesProps {
  readonly graded: Extract<GradeChoices, { status: "graded" }>;
  /** The request that was solved. */
  readonly asked: PatternDocument;
  readonly unlocked: boolean;
  readonly onDone: () => void;
}

/** The calculated gradings, one looked at a time; nothing changes until the designer takes one. */
export function SolvedChoices({ graded, asked, unlocked, onDone }: SolvedChoicesProps) {
  const { changeDraft, document, unit } = useEditing("changeDraft", "document", "unit");
  const [at, setAt] = useState(0);
  const { choices } = graded;
  const choice = choices[at];
  const measurements = useMemo(
    () => (choice === undefined ? [] : gradedMeasurements({ ...asked, grading: choice.grading })),
    [asked, choice],
  );
  if (choice === undefined) return null;
  const take = () => {
    changeDraft((draft) => withGrading(draft, choice.grading, unlocked), null);
    onDone();
  };
  // Counts that it leaves out stay as they are.
  const after = { ...asked, grading: { ...asked.grading, ...choice.grading } };
  const changes = sizedChanges(asked, after, { part: "counts", unit });
  const words = [...choiceWords(asked, { choice, measurements }, unit), ...answerWords(graded)];
  return (
    <section aria-label="Calculated numbers" className="mt-5 rounded-sheet border-2 border-ink bg-sheet p-5">
      <h3 className="mb-1">Calculated</h3>
      {!unlocked && document !== null && document !== asked ? (
        <p className="mb-2 text-sm font-semibold text-thread">▲ These were calculated before your latest edits.</p>
      ) : null}
      {choices.length > 1 ? <ChoiceSlider choices={choices} at={at} onChange={setAt} /> : null}
      <ul className="mb-3 mt-1 list-disc pl-5">
        {words.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <div className="mb-5 flex flex-wrap items-center gap-4">
        <Button onClick={take}>Use these numbers</Button>
        <Button look="plain" onClick={onDone}>
          Keep the current numbers
        </Button>
      </div>
      {changes.length === 0 ? (
        <p className="text-soft">These are the numbers that you have.</p>
      ) : (
        <SizedChangeTable
          label="What would change"
          corner="What would change"
          sizes={comparedSizes(asked, after)}
          changes={changes}
        />
      )}
    </section>
  );
}

interface ChoiceSliderProps {
  readonly choices: readonly GradingChoice[];
  readonly at: number;
  readonly onChange: (at: number) => void;
}

/** From the closest to the targets to the most even steps; each position is a best trade-off. */
function ChoiceSlider({ choices, at, onChange }: ChoiceSliderProps) {
  const choice = choices[at];
  const within = choices.filter(isWithin).length;
  return (
    <div className="mb-4">
      <p className="mb-3 max-w-prose text-sm text-soft">
        Being closest to the targets and growing evenly from size to size pull apart. Each of these {choices.length}{" "}
        dots is a trade-off between the two; the higher it is, the further from the targets.{" "}
        {withinWords(within, choices.length)}
      </p>
      <TradeOffPicture choices={choices} chosen={at} />
      <input
        type="range"
        aria-label="Between closest to target and most even"
        aria-valuetext={choice === undefined ? undefined : choiceValueText(choice)}
        className="mt-2 block h-8 w-full max-w-lg accent-thread"
        min={0}
        max={choices.length - 1}
        value={at}
        onChange={({ currentTarget }) => onChange(Number(currentTarget.value))}
      />
      <div className="flex max-w-lg justify-between gap-4 text-sm font-semibold">
        <span>{CLOSEST}</span>
        <span className="text-right">{MOST_EVEN}</span>
      </div>
    </div>
  );
}

function withinWords(within: number, all: number): string {
  if (within === all) return "All of them keep every measurement within its tolerance.";
  if (within === 0) return "None of them keeps every measurement within its tolerance.";
  return `Those that keep every measurement within its tolerance are filled: ${within} of ${all}.`;
}

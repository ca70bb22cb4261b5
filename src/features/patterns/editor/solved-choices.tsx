"use client";

import type { GradingChoice } from "@/engine/grading";
import { ownValue, type PatternDocument } from "@/engine/pattern";
import { Button } from "@/ui/button";
import { MatrixTable } from "@/ui/matrix-table";
import { useEditing } from "./editing";
import { withGrading } from "./grading-numbers";
import { choiceName, choiceWords } from "./solved-copy";

interface SolvedChoicesProps {
  readonly choices: readonly GradingChoice[];
  /** The request that was solved. */
  readonly asked: PatternDocument;
  readonly unlocked: boolean;
  readonly onDone: () => void;
}

/** The calculated gradings side by side; nothing changes until the designer chooses one. */
export function SolvedChoices({ choices, asked, unlocked, onDone }: SolvedChoicesProps) {
  const { changeDraft, document, unit } = useEditing("changeDraft", "document", "unit");
  const shown = sameGrading(choices) ? choices.slice(0, 1) : choices;
  const take = ({ grading }: GradingChoice) => {
    changeDraft((draft) => withGrading(draft, grading, unlocked), null);
    onDone();
  };
  return (
    <section aria-label="Calculated numbers" className="mt-5 rounded-sheet border-2 border-ink bg-sheet p-5">
      <h3 className="mb-1">{shown.length === 1 ? "Calculated" : "Two results: choose one"}</h3>
      {!unlocked && document !== null && document !== asked ? (
        <p className="mb-2 text-sm font-semibold text-thread">▲ These were calculated before your latest edits.</p>
      ) : null}
      <div className="grid gap-6 md:grid-cols-2">
        {shown.map((choice) => (
          <div key={choice.slack}>
            <h4 className="font-semibold">{shown.length === 1 ? "Best result" : choiceName(choice)}</h4>
            <ul className="mb-3 mt-1 list-disc pl-5">
              {choiceWords(asked, choice, unit).map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
            <Button onClick={() => take(choice)}>Use these numbers</Button>
          </div>
        ))}
      </div>
      {shown.length > 1 ? <Differences choices={shown} pattern={asked} /> : null}
      <div className="mt-4">
        <Button look="plain" onClick={onDone}>
          Keep the current numbers
        </Button>
      </div>
    </section>
  );
}

function Differences({
  choices,
  pattern,
}: {
  readonly choices: readonly GradingChoice[];
  readonly pattern: PatternDocument;
}) {
  const numberOf = (choice: GradingChoice, count: string, size: string) =>
    ownValue(ownValue(choice.grading, count), size);
  const differs = (count: string, size: string) =>
    new Set(choices.map((choice) => numberOf(choice, count, size))).size > 1;
  const rows = pattern.counts
    .filter(({ id }) => pattern.sizes.some((size) => differs(id, size.id)))
    .map(({ id, label }) => ({
      key: id,
      head: label,
      cells: pattern.sizes.map((size) => (
        <span key={size.id} className={`numbers ${differs(id, size.id) ? "font-semibold" : "text-soft"}`}>
          {choices.map((choice, index) => (
            <span key={choice.slack} className="block whitespace-nowrap">
              <span className="sr-only">{choiceName(choice)}: </span>
              {index > 0 && !differs(id, size.id) ? "" : numberOf(choice, id, size.id)}
            </span>
          ))}
        </span>
      )),
    }));
  return (
    <div className="mt-5">
      <p className="mb-2 text-sm text-soft">
        Where they differ: above {choices.map(choiceName).join(", below ").toLowerCase()}.
      </p>
      <MatrixTable
        label="Where they differ"
        corner="Count"
        columns={pattern.sizes.map(({ id, label }) => ({ key: id, label }))}
        rows={rows}
      />
    </div>
  );
}

function sameGrading(choices: readonly GradingChoice[]): boolean {
  return new Set(choices.map(({ grading }) => JSON.stringify(grading))).size === 1;
}

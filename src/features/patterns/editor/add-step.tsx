"use client";

import { useState } from "react";
import { useEditing } from "./editing";
import { openParts, type DraftPiece, type NewStep } from "./draft-garment";
import { AddButton } from "./item-buttons";
import { nextSteps } from "./next-steps";

interface AddStepProps {
  readonly piece: DraftPiece;
  /** Whether it has a step. */
  readonly isBegun: boolean;
  readonly onSteps: (steps: readonly NewStep[]) => void;
}

const ANEW = "";

/** What is done next in a piece: with the stitches on the needle, those of one part where there are several. */
export function AddStep({ piece, isBegun, onSteps }: AddStepProps) {
  const { pattern } = useEditing("pattern");
  const open = openParts(pattern.garment, piece.id);
  const [chosen, setChosen] = useState<string | null>(null);
  const part = chosen === ANEW ? undefined : (open.find((each) => each === chosen) ?? open.at(-1));
  const head = `next-${piece.id}`;
  return (
    <section aria-labelledby={head} className="mt-4">
      <h5 id={head} className="font-sans text-base font-semibold">
        {isBegun ? "Next" : "Start with"}
      </h5>
      {open.length === 0 ? null : (
        <label className="mb-2 block text-sm text-soft">
          With the stitches
          <select
            className="control mt-0.5 block min-h-11 w-56 max-w-full px-2 text-base text-ink"
            value={part ?? ANEW}
            onChange={({ target }) => setChosen(target.value)}
          >
            {open.map((each) => (
              <option key={each} value={each}>
                {each}
              </option>
            ))}
            <option value={ANEW}>new stitches of this piece</option>
          </select>
        </label>
      )}
      <div className="flex flex-wrap gap-2">
        {nextSteps({ pattern, piece, part }).map(({ label, steps: added }) => (
          <AddButton
            key={label}
            label={label}
            onAdd={() => {
              setChosen(null);
              onSteps(added);
            }}
          />
        ))}
      </div>
    </section>
  );
}

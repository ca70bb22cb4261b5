import type { Learned } from "@/features/calls/prior-data";
import { OneButtonForm } from "@/ui/one-button-form";
import { setUsesPrior } from "./learning-actions";

interface LearningSectionProps {
  readonly callId: string;
  readonly learned: Learned;
  readonly mayEdit: boolean;
}

/** From how many earlier tests the spreads start, what that changes, and a button to do without. */
export function LearningSection({ callId, learned: { prior, isUsed }, mayEdit }: LearningSectionProps) {
  if (prior === null)
    return (
      <p className="text-soft">
        The usual values are those of Sizewright: there was no earlier test of another pattern by the same designer to
        learn from when the first report came.
      </p>
    );
  const tests =
    prior.calls === 1 ? "one earlier test of another pattern" : `${prior.calls} earlier tests of other patterns`;
  return (
    <>
      <p className="mb-4 text-soft">
        {isUsed
          ? `The spreads are also pulled toward what ${tests} by the same designer showed: strongly where this test has few measurements of its own, hardly where it has many. Likely causes are found without that. What was learned was kept when the first report of this test came, so that later tests change nothing here. It is about patterns and tapes, and holds nothing about any person.`
          : `What ${tests} by the same designer showed is kept with this test, but not used: the spreads come from this test’s own measurements and the usual values.`}
      </p>
      {mayEdit ? (
        <OneButtonForm
          action={setUsesPrior}
          sends={{ callId, uses: isUsed ? "no" : "yes" }}
          button={isUsed ? "Calculate without earlier tests" : "Use what earlier tests showed"}
          waiting="One moment …"
        />
      ) : null}
    </>
  );
}

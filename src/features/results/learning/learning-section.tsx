import type { Learned } from "@/features/calls/prior-data";
import { OneButtonForm } from "@/ui/one-button-form";
import { setUsesPrior } from "./learning-actions";

interface LearningSectionProps {
  readonly callId: string;
  readonly learned: Learned;
  readonly mayEdit: boolean;
}

/** From how many earlier tests the spreads start, of how many testers their own showed something, what that changes, and a button to do without. */
export function LearningSection({ callId, learned, mayEdit }: LearningSectionProps) {
  const { prior, knownTesters, isUsed } = learned;
  if (prior === null && knownTesters === 0)
    return (
      <p className="text-soft">
        The usual values are those of Sizewright: there was no earlier test of another pattern by the same designer to
        learn from when the first report came.
      </p>
    );
  return (
    <>
      {prior === null ? null : <p className="mb-4 text-soft">{spreadWords(prior.calls, isUsed)}</p>}
      {knownTesters === 0 ? null : <p className="mb-4 text-soft">{testerWords(knownTesters, isUsed)}</p>}
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

function spreadWords(calls: number, isUsed: boolean): string {
  const tests = calls === 1 ? "one earlier test of another pattern" : `${calls} earlier tests of other patterns`;
  return isUsed
    ? `The spreads are also pulled toward what ${tests} by the same designer showed: strongly where this test has few measurements of its own, hardly where it has many. Likely causes are found without that. What was learned was kept when the first report of this test came, so that later tests change nothing here. It is about patterns and tapes, and holds nothing about any person.`
    : `What ${tests} by the same designer showed is kept with this test, but not used: the spreads come from this test’s own measurements and the usual values.`;
}

function testerWords(testers: number, isUsed: boolean): string {
  const who = testers === 1 ? "One tester has" : `${testers} testers have`;
  return isUsed
    ? `${who} tested for the same designer before and ${testers === 1 ? "allows" : "allow"} that it is used here: their measurements count for more or less as those of the earlier tests scattered less or more than others’, and their garment is expected to come out beside their swatch as their earlier ones did. They can take that back at any time.`
    : `${who} tested for the same designer before and ${testers === 1 ? "allows" : "allow"} that it is used here; it is not used.`;
}

import { fieldOf } from "@/engine/reporting";
import type { LoadedTester } from "../home/loaders";
import { ANSWER_BUTTONS } from "./answer-copy";
import { AnswerForm, ConfirmWorkedForm, type KeptCount } from "./answer-form";
import type { TesterCorrection } from "./correction-data";
import { mayAnswer } from "./may-answer";

interface OwnAnswerProps {
  readonly correction: TesterCorrection;
  readonly loaded: Pick<LoadedTester, "tester" | "inHand">;
}

/** What a tester answered to a correction, or the question; whoever has finished is asked nothing. */
export function OwnAnswer({ correction, loaded }: OwnAnswerProps) {
  const { correctionId, answer, text, worked } = correction;
  const { testerId } = loaded.tester;
  const isOpen = mayAnswer(loaded.inHand);
  if (answer === null && !isOpen) return null;
  const counts = answer === "kept" ? keptCounts(correction, loaded) : [];
  const form = <AnswerForm {...{ testerId, correctionId, answer }} about={text.slice(0, 60)} />;
  return (
    <div className="mt-3">
      {answer === null ? (
        <>
          <p className="mb-2 font-semibold">Where are you with this?</p>
          {form}
        </>
      ) : (
        <>
          <p>
            <span aria-hidden="true">✓ </span>Your answer:{" "}
            <span className="font-semibold">{ANSWER_BUTTONS[answer]}</span>
            {worked === null || counts.length === 0 ? "" : `. You worked ${counts.map(workedWords).join(", ")}`}
          </p>
          {isOpen && counts.length > 0 && worked === null ? (
            <ConfirmWorkedForm {...{ testerId, correctionId, counts }} />
          ) : null}
          {isOpen ? (
            <details className="mt-1">
              <summary className="text-link inline-flex min-h-11 items-center">Change your answer</summary>
              <div className="mt-1">{form}</div>
            </details>
          ) : null}
        </>
      )}
    </div>
  );
}

/** An asked tester has not answered yet, or not confirmed the numbers that they keep. */
export function isOpenFor(correction: TesterCorrection, loaded: OwnAnswerProps["loaded"]): boolean {
  const { answer, worked } = correction;
  if (!mayAnswer(loaded.inHand)) return false;
  return answer === null || (answer === "kept" && worked === null && keptCounts(correction, loaded).length > 0);
}

function keptCounts({ before, worked }: TesterCorrection, { tester }: OwnAnswerProps["loaded"]): KeptCount[] {
  return Object.entries(before).map(([id, was]) => {
    const count = tester.revision.document.counts.find((one) => one.id === id);
    const number = worked?.[id] ?? was;
    return {
      ...{ id, number, field: fieldOf.worked(id), label: count?.label ?? id },
      direction: count?.direction ?? "stitches",
    };
  });
}

function workedWords({ label, direction, number }: KeptCount): string {
  return `${number} ${direction} (${label})`;
}

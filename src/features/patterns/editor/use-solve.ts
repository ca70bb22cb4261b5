import type { PatternDocument } from "@/engine/pattern";
import type { AskedGrading, GradingAnswer } from "../grading/schema";
import type { Failure } from "@/server/action";
import { useCallback, useEffect, useRef, useState } from "react";
import type { GradeChoices } from "@/engine/grading";
import { useEditingStore } from "./editing";
import { readGrading } from "./read-grading";

/** Actions of another feature, passed by the page for solving. */
export interface GradingActions {
  readonly ask: (
    patternId: string,
    input: { readonly document: PatternDocument; readonly idempotencyKey: string },
  ) => Promise<AskedGrading | Failure>;
  readonly stop: (patternId: string, gradingId: string) => Promise<GradingAnswer | Failure>;
}

const LOOK_EVERY_MS = 400;
const UNSENT = "This did not reach Sizewright. Check your connection and calculate again. Nothing you typed is lost.";

type Solving =
  | { readonly kind: "resting" }
  | { readonly kind: "waiting"; readonly gradingId: string | null; readonly since: number }
  | { readonly kind: "told"; readonly says: readonly string[] }
  | {
      readonly kind: "answered";
      readonly outcome: GradeChoices;
      readonly asked: PatternDocument;
      readonly unlocked: boolean;
    };

export interface Solve {
  readonly solving: Solving;
  /** @param unlocked ignores locks, so that everything is calculated. */
  readonly solve: (unlocked: boolean) => Promise<void>;
  readonly stop: () => Promise<void>;
  readonly forget: () => void;
}

/** Has the server grade what is being edited, and waits for it. */
export function useSolve({ ask, stop: stopGrading }: GradingActions): Solve {
  const store = useEditingStore();
  const [solving, setSolving] = useState<Solving>({ kind: "resting" });
  const turn = useRef(0);
  useEffect(() => {
    const current = turn;
    return () => {
      current.current += 1;
    };
  }, []);

  const solve = useCallback(
    async (unlocked: boolean) => {
      const { patternId, document } = store.getState();
      if (document === null) return;
      const asked = unlocked ? withoutLocks(document) : document;
      const mine = (turn.current += 1);
      const show = (next: Solving) => (turn.current === mine ? setSolving(next) : undefined);
      const since = Date.now();
      show({ kind: "waiting", gradingId: null, since });
      try {
        const begun = await ask(patternId, { document: asked, idempotencyKey: crypto.randomUUID() });
        if (begun.status === "failed") return show({ kind: "told", says: [begun.says] });
        if (begun.status === "faults") return show({ kind: "told", says: begun.faults.map(({ says }) => says) });
        show({ kind: "waiting", gradingId: begun.gradingId, since });
        while (turn.current === mine) {
          const answer = await readGrading(patternId, begun.gradingId);
          if (answer.status === "done") return show({ kind: "answered", outcome: answer.outcome, asked, unlocked });
          if (answer.status !== "waiting") return show({ kind: "told", says: [answer.says] });
          await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
        }
      } catch {
        show({ kind: "told", says: [UNSENT] });
      }
    },
    [ask, store],
  );
  const stop = useCallback(async () => {
    if (solving.kind !== "waiting" || solving.gradingId === null) return;
    await stopGrading(store.getState().patternId, solving.gradingId).catch(() => null);
  }, [solving, stopGrading, store]);
  const forget = useCallback(() => {
    turn.current += 1;
    setSolving({ kind: "resting" });
  }, []);
  return { solving, solve, stop, forget };
}

function withoutLocks(pattern: PatternDocument): PatternDocument {
  return { ...pattern, counts: pattern.counts.map(({ locked: _locked, ...count }) => count) };
}

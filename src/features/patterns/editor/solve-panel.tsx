"use client";

import { Button } from "@/ui/button";
import { Notice } from "@/ui/notice";
import { ClashNotice } from "./clash-notice";
import { useEditingValue } from "./editing";
import { SolvedChoices } from "./solved-choices";
import type { Solve } from "./use-solve";

/** Has the counts calculated, and shows the choices before anything is changed. */
export function SolvePanel({ solving, solve, stop, forget }: Solve) {
  const { isUnread, faultCount, hasLocks } = useEditingValue(({ document, faults, pattern }) => ({
    isUnread: document === null,
    faultCount: faults.size,
    hasLocks: pattern.counts.some(({ locked }) => locked !== undefined),
  }));
  const isWaiting = solving.kind === "waiting";
  return (
    <div className="mb-5">
      <div className="flex flex-wrap items-center gap-3">
        <Button disabled={isUnread || isWaiting} onClick={() => void solve(false)}>
          {hasLocks ? "Calculate unlocked numbers" : "Calculate all"}
        </Button>
        {hasLocks ? (
          <Button look="quiet" disabled={isUnread || isWaiting} onClick={() => void solve(true)}>
            Unlock and calculate all
          </Button>
        ) : null}
        {isWaiting ? (
          <Button look="plain" onClick={() => void stop()}>
            Stop
          </Button>
        ) : null}
        <p role="status" className="text-sm text-soft">
          {isWaiting ? "Calculating…" : isUnread ? `▲ ${toLookAt(faultCount)} before calculating.` : ""}
        </p>
      </div>
      {solving.kind === "told" ? (
        <div className="mt-4">
          <Notice tone="problem" title="This could not be calculated">
            {solving.says.map((says) => (
              <p key={says}>{says}</p>
            ))}
          </Notice>
        </div>
      ) : null}
      {solving.kind === "answered" ? <Answer answered={solving} onDone={forget} /> : null}
    </div>
  );
}

function Answer({
  answered: { outcome, asked, unlocked },
  onDone,
}: {
  readonly answered: Extract<Solve["solving"], { kind: "answered" }>;
  readonly onDone: () => void;
}) {
  switch (outcome.status) {
    case "graded":
      return <SolvedChoices graded={outcome} asked={asked} unlocked={unlocked} onDone={onDone} />;
    case "infeasible":
      return <ClashNotice clash={outcome.clash} onDone={onDone} />;
    case "faults":
      return (
        <div className="mt-4">
          <Notice tone="problem" title="This could not be calculated">
            {outcome.faults.map(({ says }) => (
              <p key={says}>{says}</p>
            ))}
          </Notice>
        </div>
      );
  }
}

function toLookAt(places: number): string {
  return places === 1 ? "Fix one error" : `Fix ${places} errors`;
}

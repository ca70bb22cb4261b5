import Link from "next/link";
import type { ReactNode } from "react";
import { callPageHref } from "@/features/calls/call-pages";
import { Notice } from "@/ui/notice";
import { WatchFor } from "@/ui/watch-for";
import type { AnalysisProgress } from "../data";
import type { LoadedResults, Results } from "../loaders";
import { StillCalculating } from "./still-calculating";

interface ResultsFrameProps<Parts> {
  readonly callId: string;
  readonly loaded: LoadedResults<Parts>;
  readonly children: (results: Results<Parts>) => ReactNode;
}

/** A page of results: what was calculated last, and a notice if reports or the pattern have changed since. */
export function ResultsFrame<Parts>({ callId, loaded, children }: ResultsFrameProps<Parts>) {
  const { progress, results, leftOut, tests } = loaded;
  const watch = `/calls/${callId}/analysis`;
  if (results === null && progress.status === "updating") return <StillCalculating what="call" watch={watch} />;
  return (
    <>
      <Progress {...{ callId, progress, watch }} hasResults={results !== null} />
      {leftOut.length === 0 ? null : (
        <Notice
          tone="problem"
          title={leftOut.length === 1 ? "One report was left out" : `${leftOut.length} reports were left out`}
        >
          <ul className="mt-1 space-y-1">
            {leftOut.map(({ name, message }) => (
              <li key={name} className="wrap-anywhere">
                {name}: {message}
              </li>
            ))}
          </ul>
          <p className="mt-2">Everything else was calculated without them. Ask them to correct their report.</p>
        </Notice>
      )}
      {tests.length === 0 ? null : <CountedTests tests={tests} />}
      {results === null ? null : children(results)}
    </>
  );
}

/** How many of the reports come from which test: from this one, which is the first, and from those before it. */
function CountedTests({ tests: [own, ...earlier] }: Pick<LoadedResults<unknown>, "tests">) {
  return (
    <Notice title={`Reports of ${1 + earlier.length} tests count together`}>
      <ul className="numbers">
        <li>This test: {reportWords(own?.reports ?? 0)}</li>
        {earlier.map(({ callId, title, reports }) => (
          <li key={callId} className="wrap-anywhere">
            <Link href={callPageHref(callId, "overview")} className="text-link">
              <bdi>{title}</bdi>
            </Link>
            : {reportWords(reports)}, with the stitches and rows worked there
          </li>
        ))}
      </ul>
    </Notice>
  );
}

function reportWords(reports: number): string {
  if (reports === 0) return "no reports yet";
  return reports === 1 ? "1 report" : `${reports} reports`;
}

interface ProgressProps {
  readonly callId: string;
  readonly progress: AnalysisProgress;
  /** Address that answers whether there is something new. */
  readonly watch: string;
  readonly hasResults: boolean;
}

function Progress({ callId, progress, watch, hasResults }: ProgressProps) {
  switch (progress.status) {
    case "current":
      return null;
    case "updating":
      return (
        <Notice title="Updating">
          <p>
            Reports or the pattern have changed. You see the previous results; the new ones appear here as soon as they
            are ready.
          </p>
          <WatchFor address={watch} />
        </Notice>
      );
    case "stopped":
    case "failed":
      return (
        <Notice
          tone="problem"
          title={progress.status === "stopped" ? "The calculation was stopped" : "The results cannot be calculated"}
        >
          <p>{progress.message}</p>
          {hasResults ? <p className="mt-1">The results below are from before the last change.</p> : null}
          <p className="mt-2">
            <Link href={callPageHref(callId, "progress")} className="text-link">
              See the testers’ reports
            </Link>
          </p>
        </Notice>
      );
  }
}

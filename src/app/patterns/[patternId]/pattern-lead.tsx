import Link from "next/link";
import type { ReactNode } from "react";
import { callPageHref } from "@/features/calls/call-pages";
import { listingWords, nextSteps, resultWords, waitsFor } from "@/features/calls/next-steps";
import type { StandingCall } from "@/features/calls/standing-data";
import { GarmentGlance } from "@/features/patterns/drawing/garment-glance";
import { gradingState, gradingWords } from "@/features/patterns/grading-state";
import type { PatternPage } from "@/features/patterns/loaders";
import { ButtonLink } from "@/ui/button";
import { Sheet } from "@/ui/sheet";

interface PatternLeadProps {
  readonly page: PatternPage;
  /** How far its tests have come, the newest first. */
  readonly standings: readonly StandingCall[];
  /** How many more are archived. */
  readonly archivedCalls: number;
  /** The form for a first test; null for viewers. */
  readonly newTest: ReactNode;
}

/** A pattern at a glance: its drawing, how it stands, and the one thing to do next. */
export function PatternLead({ page, standings, archivedCalls, newTest }: PatternLeadProps) {
  const { patternId, revision, viewer, mayEdit } = page;
  const home = `/patterns/${patternId}`;
  const grading = gradingState(revision.document);
  const test = standings.find(({ isOpen }) => isOpen) ?? standings[0];
  return (
    <div className="mb-12 grid items-stretch gap-6 lg:has-[figure]:grid-cols-[2fr_3fr]">
      <GarmentGlance pattern={revision.document} unit={viewer.unit} />
      <Sheet className="flex flex-col">
        <h2 className="mb-2 text-xl">How it stands</h2>
        <dl className="numbers divide-y divide-line">
          <State name="Grading" href={`${home}/edit`} isOff={grading.missed + grading.unknown > 0}>
            {gradingWords(grading)}
          </State>
          <State name="Tester call" href={test && callPageHref(test.callId, "setUp")}>
            {test === undefined ? (archivedCalls === 0 ? "No test yet" : "No test now") : listingWords(test)}
          </State>
          <State
            name="Results"
            href={test && callPageHref(test.callId, "differences")}
            isOff={test !== undefined && test.off > 0}
          >
            {test === undefined ? "No reports in a current test" : resultWords(test)}
          </State>
          {archivedCalls === 0 ? null : (
            <State name="Archived" href="/calls/archived">
              {archivedCalls === 1 ? "1 test" : `${archivedCalls} tests`}
            </State>
          )}
        </dl>
        {mayEdit ? (
          <div className="mt-auto border-t border-line pt-5">
            {test === undefined ? <FirstTest home={home} newTest={newTest} /> : <NextStep test={test} />}
          </div>
        ) : null}
      </Sheet>
    </div>
  );
}

interface StateProps {
  readonly name: string;
  readonly href?: string | undefined;
  readonly isOff?: boolean;
  readonly children: string;
}

function State({ name, href, isOff = false, children }: StateProps) {
  return (
    <div className="grid gap-x-4 py-2.5 sm:grid-cols-[8rem_minmax(0,1fr)]">
      <dt className="text-soft">{name}</dt>
      <dd className={isOff ? "font-semibold text-thread" : ""}>
        {isOff ? <span aria-hidden="true">▲ </span> : null}
        {href === undefined ? (
          children
        ) : (
          <Link
            href={href}
            prefetch={false}
            className={isOff ? "text-link" : "underline decoration-1 underline-offset-4"}
          >
            {children}
          </Link>
        )}
      </dd>
    </div>
  );
}

function NextStep({ test }: { readonly test: StandingCall }) {
  const [step] = nextSteps(test);
  const { callId, title } = test;
  return (
    <>
      <p className="mb-3 wrap-anywhere">
        <Link href={callPageHref(callId, "overview")} className="text-link font-semibold">
          {title}
        </Link>
        : {step?.message ?? waitsFor(test)}
      </p>
      {step === undefined ? null : <ButtonLink href={callPageHref(callId, step.page)}>{step.link}</ButtonLink>}
    </>
  );
}

function FirstTest({ home, newTest }: { readonly home: string; readonly newTest: ReactNode }) {
  return (
    <>
      <p className="mb-3">Find testers with a tester call, or import the reports that you have.</p>
      <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
        {newTest}
        <Link href={`${home}/reports/paste`} className="text-link">
          Import testers’ reports
        </Link>
      </div>
    </>
  );
}

import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { Section } from "@/ui/section";
import type { Evidence } from "./plan-data";
import { instructionErrorCopy, acceptedCopy } from "./accepted-copy";
import { AcceptedList } from "./accepted-list";

interface RevisionEvidenceProps {
  readonly evidence: Evidence;
  /** The revision that it changed, to which the evidence refers. */
  readonly before: PatternDocument;
  readonly unit: LengthUnit;
}

/** The evidence for a revision: what the test had shown when it was saved. */
export function RevisionEvidence({ evidence, before, unit }: RevisionEvidenceProps) {
  const { take, causes, testers, instructionErrors, call } = evidence;
  return (
    <Section
      title="Evidence"
      intro={
        <>
          What{" "}
          {call ? (
            <Link href={callPageHref(call.callId, "differences")} className="text-link">
              {call.title}
            </Link>
          ) : (
            "a deleted test"
          )}{" "}
          showed when this was saved, from {testers} testers. It stays as it was, even when more reports come in.
        </>
      }
    >
      {instructionErrors.length === 0 ? null : (
        <p className="mb-4 max-w-3xl">{instructionErrorCopy(instructionErrors, before)}</p>
      )}
      <AcceptedList taken={acceptedCopy(take, { causes, pattern: before, unit })} />
    </Section>
  );
}

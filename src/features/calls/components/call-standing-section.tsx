import Link from "next/link";
import { Sheet } from "@/ui/sheet";
import { callPageHref, type CallPageKey, type NextStep } from "../call-pages";
import { waitingStep } from "../next-steps";
import type { CallStanding } from "../standing-data";
import { NextStepList } from "./next-step-list";

interface CallStandingSectionProps {
  readonly callId: string;
  readonly standing: CallStanding;
  readonly steps: readonly NextStep[];
}

/** The progress of an open call, what its designer has to do, and where. */
export function CallStandingSection({ callId, standing, steps }: CallStandingSectionProps) {
  return (
    <div className="mb-12 grid gap-6 lg:grid-cols-[3fr_2fr]">
      <Sheet>
        <h2 className="mb-3 text-xl">What needs you</h2>
        {steps.length === 0 ? (
          <NextStepList callId={callId} steps={[waitingStep(standing)]} />
        ) : (
          <NextStepList callId={callId} steps={steps} isLeading />
        )}
      </Sheet>
      <Sheet>
        <h2 className="mb-3 text-xl">So far</h2>
        <dl className="grid grid-cols-3 gap-x-4 gap-y-3">
          {figures(standing).map(({ page, part, label, many }) => (
            <div key={label} className="flex flex-col-reverse justify-end">
              <dt className="text-sm">
                <Link
                  href={`${callPageHref(callId, page)}${part ?? ""}`}
                  prefetch={false}
                  className="inline-flex min-h-6 items-center text-link"
                >
                  {label}
                </Link>
              </dt>
              <dd className="font-serif text-2xl numbers">{many}</dd>
            </div>
          ))}
        </dl>
      </Sheet>
    </div>
  );
}

interface Figure {
  readonly page: CallPageKey;
  /** The part of the page that it leads to. */
  readonly part?: string;
  readonly label: string;
  readonly many: number;
}

function figures({ applied, placed, invited, accepted, reported, questions }: CallStanding): readonly Figure[] {
  return [
    { page: "applications", label: "applied", many: applied },
    { page: "sizes", label: "to invite", many: placed },
    { page: "sizes", part: "#invitations", label: "invited", many: invited },
    { page: "progress", label: "accepted", many: accepted },
    { page: "progress", label: "reported", many: reported },
    { page: "questions", label: "open questions", many: questions },
  ];
}

import Link from "next/link";
import { Sheet } from "@/ui/sheet";
import { nextSteps, waitsFor } from "../next-steps";
import type { CallStanding } from "../standing-data";
import { NextStepList } from "./next-step-list";

interface CallStandingSectionProps {
  readonly callId: string;
  readonly standing: CallStanding;
}

/** The progress of an open call, what its designer has to do, and where. */
export function CallStandingSection({ callId, standing }: CallStandingSectionProps) {
  const steps = nextSteps(standing);
  return (
    <div className="mb-12 grid items-start gap-6 lg:grid-cols-[3fr_2fr]">
      <Sheet>
        <h2 className="mb-3 text-xl">Next steps</h2>
        {steps.length === 0 ? <p>{waitsFor(standing)}</p> : <NextStepList callId={callId} steps={steps} />}
      </Sheet>
      <Sheet>
        <h2 className="mb-3 text-xl">So far</h2>
        <dl className="grid grid-cols-3 gap-x-4 gap-y-3">
          {figures(standing).map(({ path, label, many }) => (
            <div key={label} className="flex flex-col-reverse justify-end">
              <dt className="text-sm">
                <Link
                  href={`/calls/${callId}${path}`}
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

function figures({ applied, placed, invited, accepted, reported, questions }: CallStanding) {
  return [
    { path: "/applications", label: "applied", many: applied },
    { path: "/places", label: "to invite", many: placed },
    { path: "/places#invitations", label: "invited", many: invited },
    { path: "/progress", label: "accepted", many: accepted },
    { path: "/progress", label: "reported", many: reported },
    { path: "/questions", label: "open questions", many: questions },
  ];
}

import type { ReactNode } from "react";

interface WhoSeesProps {
  readonly callId: string;
  readonly designer: string;
  readonly children?: ReactNode;
}

/** Who can see an application, and what it is used for. */
export function WhoSees({ callId, designer, children }: WhoSeesProps) {
  return (
    <ul className="list-disc space-y-1.5 pl-5 wrap-anywhere">
      <li>
        <bdi className="font-semibold">{designer}</bdi> sees all of it: name, e-mail address, measurements and what you
        write. So do the helpers who work on this pattern. Nobody else does: no other applicant and no other designer.
      </li>
      <li>Your measurements are only used to find a size for you.</li>
      {children}
      <li>
        All of it stands in the{" "}
        <a href={`/open-calls/${callId}/privacy`} target="_blank" className="text-link">
          privacy notice
        </a>{" "}
        (opens in a new tab).
      </li>
    </ul>
  );
}

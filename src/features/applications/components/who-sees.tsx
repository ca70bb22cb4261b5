import type { ReactNode } from "react";

/** Who gets to see an application, and what becomes of it. */
export function WhoSees({ designer, children }: { readonly designer: string; readonly children?: ReactNode }) {
  return (
    <ul className="list-disc space-y-1.5 pl-5 wrap-anywhere">
      <li>
        <bdi className="font-semibold">{designer}</bdi>, whose call this is, sees all of it: name, e-mail address,
        measurements and what you write. So do the helpers to whom <bdi>{designer}</bdi> has given leave to work on this
        pattern. Nobody else does: no other applicant, and no other designer.
      </li>
      <li>The measurements serve to find a size for you, and nothing else.</li>
      {children}
    </ul>
  );
}

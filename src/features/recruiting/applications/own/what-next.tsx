import type { OwnApplication } from "./own-data";
import { momentWords, untilWords } from "@/ui/moment-copy";

interface WhatNextProps {
  readonly application: OwnApplication;
  readonly timeZone: string;
}

/** What happens after an application was sent, and when, in the applicant's time zone. */
export function WhatNext({ application: { listing, designer, document }, timeZone }: WhatNextProps) {
  if (listing === null) return <p>The tester call is not public at the moment, so there are no dates yet.</p>;
  const { applyUntil, startOn, swatchBy, reportBy } = listing.dates;
  return (
    <>
      <ol className="list-decimal space-y-1.5 pl-5 wrap-anywhere">
        <li>
          Applications are open until <When>{untilWords(applyUntil.at, timeZone)}</When>.
        </li>
        <li>
          Then <bdi>{designer}</bdi> assigns sizes. If you are offered a spot, they send you a link by e-mail or
          message, and you see it here too. Not everybody can get a spot.
        </li>
        <li>
          The test starts on <When>{momentWords(startOn.at, { timeZone, edge: "time" })}</When>. Swatches are due by{" "}
          <When>{untilWords(swatchBy.at, timeZone)}</When>, reports by <When>{untilWords(reportBy.at, timeZone)}</When>.
        </li>
      </ol>
      <p className="mt-3 text-sm text-soft">
        {document.timeZone === null
          ? `Time zone: ${timeZone}, the test’s own, because your browser did not give yours.`
          : `Time zone: ${timeZone}.`}
      </p>
    </>
  );
}

function When({ children }: { readonly children: string }) {
  return <span className="numbers font-semibold">{children}</span>;
}

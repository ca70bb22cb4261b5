import type { OwnApplication } from "../../own-data";
import { momentWords, untilWords } from "@/ui/moment-words";

interface WhatNextProps {
  readonly application: OwnApplication;
  readonly timeZone: string;
}

/** What happens after an application was sent, and when, in her zone. */
export function WhatNext({ application: { opening, designer, document }, timeZone }: WhatNextProps) {
  if (opening === null) return <p>The call is not public just now; its days are not settled.</p>;
  const { applyUntil, startOn, swatchBy, reportBy } = opening.dates;
  return (
    <>
      <ol className="list-decimal space-y-1.5 pl-5 wrap-anywhere">
        <li>
          Others can apply until <When>{untilWords(applyUntil.at, timeZone)}</When>.
        </li>
        <li>
          Then <bdi>{designer}</bdi> gives the places. To whom one is offered, <bdi>{designer}</bdi> sends a link, by
          e-mail or as a message; here you see it too. Not everybody can have a place.
        </li>
        <li>
          The test begins on <When>{momentWords(startOn.at, { timeZone, edge: "time" })}</When>; swatches are wanted by{" "}
          <When>{untilWords(swatchBy.at, timeZone)}</When>, all the rest by{" "}
          <When>{untilWords(reportBy.at, timeZone)}</When>.
        </li>
      </ol>
      <p className="mt-3 text-sm text-soft">
        {document.timeZone === null
          ? `Times are those of the call’s own zone, ${timeZone}: your browser told none of yours.`
          : `Times are yours, in ${timeZone}.`}
      </p>
    </>
  );
}

function When({ children }: { readonly children: string }) {
  return <span className="numbers font-semibold">{children}</span>;
}

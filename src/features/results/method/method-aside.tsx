import Link from "next/link";
import type { Outlier } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { MOST_TOLD } from "./method-example";
import { outlierSentence } from "../mistakes/outlier-copy";

interface MethodAsideProps {
  readonly callId: string;
  readonly results: Results<PageParts<"method">>;
  readonly names: ReadonlyMap<string, string>;
  readonly unit: LengthUnit;
}

/** Which readings are excluded, and why. */
export function MethodAside({ callId, results, names, unit }: MethodAsideProps) {
  const { suspects, readings } = results.method;
  const { all, counted, left } = readings;
  const why = [
    { count: left.slip, says: "look like a mistake and are excluded automatically until one of you includes them" },
    { count: left["set-aside"], says: "were excluded by one of you" },
    { count: left.unwashed, says: "were measured before washing" },
    { count: left.changed, says: "are of something changed on purpose" },
  ].filter(({ count }) => count > 0);
  return (
    <>
      <p className="numbers mb-3 text-soft">
        Of {all} measurements that testers sent, <strong className="text-ink">{counted} count</strong>
        {why.length === 0 ? "." : ": "}
        {why.map(({ count, says }) => `${count} ${says}`).join(", ")}
        {why.length === 0 ? "" : "."} Everything that is excluded is shown.
      </p>
      <p className="mb-3 text-soft">
        Before anything is estimated, each measurement is compared with its prediction and the spread expected around
        it. One that is more than four spreads away is flagged. If one common mistake (inches entered as centimetres,
        half a girth, a misplaced decimal point, two letters swapped) brings it within two, it is excluded and the
        mistake is named. Otherwise it counts, with a mark.
      </p>
      {suspects.length === 0 ? null : (
        <ul className="list-disc space-y-1 pl-5">
          {suspects.slice(0, MOST_TOLD).map((suspect: Outlier, index) => (
            <li key={index} className="numbers max-w-3xl wrap-anywhere">
              {outlierSentence(suspect, { pattern: results.pattern, names }, unit)}
            </li>
          ))}
        </ul>
      )}
      {suspects.length > MOST_TOLD ? (
        <p className="mt-3 text-soft">
          {suspects.length - MOST_TOLD} more are among the{" "}
          <Link href={callPageHref(callId, "mistakes")} className="text-link">
            possible mistakes
          </Link>
          .
        </p>
      ) : null}
    </>
  );
}

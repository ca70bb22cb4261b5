import Link from "next/link";
import type { Outlier } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import type { Results } from "../loaders";
import type { PageParts } from "../schema";
import { suspectSentence } from "../suspect-words";

/** The others are on a page of their own, with the way to undo each. */
const MOST_TOLD = 30;

interface MethodAsideProps {
  readonly callId: string;
  readonly results: Results<PageParts<"method">>;
  readonly names: ReadonlyMap<string, string>;
  readonly unit: LengthUnit;
}

/** Which readings do not count, and why. */
export function MethodAside({ callId, results, names, unit }: MethodAsideProps) {
  const { suspects, readings } = results.method;
  const { all, counted, left } = readings;
  const why = [
    { count: left.slip, says: "look like a slip and are set aside until one of you says otherwise" },
    { count: left["set-aside"], says: "were set aside by one of you" },
    { count: left.unwashed, says: "were taken before washing" },
    { count: left.changed, says: "are of something made otherwise on purpose" },
  ].filter(({ count }) => count > 0);
  return (
    <>
      <p className="numbers mb-3 text-soft">
        Of {all} measurements that testers sent, <strong className="text-ink">{counted} count</strong>
        {why.length === 0 ? "." : ": "}
        {why.map(({ count, says }) => `${count} ${says}`).join(", ")}
        {why.length === 0 ? "" : "."} Nothing is left out without being shown.
      </p>
      <p className="mb-3 text-soft">
        Before anything is estimated, each measurement is held against its prediction with wide room on either side. One
        that lies more than four of those widths away is suspect; where one common slip (inches as centimetres, half a
        girth, a decimal point, two letters exchanged) brings it within two, it is set aside with the slip’s name. Any
        other counts and is marked.
      </p>
      {suspects.length === 0 ? null : (
        <ul className="list-disc space-y-1 pl-5">
          {suspects.slice(0, MOST_TOLD).map((suspect: Outlier, at) => (
            <li key={at} className="numbers max-w-3xl wrap-anywhere">
              {suspectSentence(suspect, { pattern: results.pattern, names }, unit)}
            </li>
          ))}
        </ul>
      )}
      {suspects.length > MOST_TOLD ? (
        <p className="mt-3 text-soft">
          {suspects.length - MOST_TOLD} more stand among the{" "}
          <Link href={`/calls/${callId}/doubtful`} className="text-link">
            doubtful readings
          </Link>
          .
        </p>
      ) : null}
    </>
  );
}

import Link from "next/link";
import { Section } from "@/ui/section";
import { fieldHref } from "../../asked/about-field";
import type { FilledReport } from "../filled-report";
import { holdsSwatchAlone } from "../holds-swatch-alone";
import { ConfirmCounts } from "./confirm-counts";
import { notMeasured, openQuestions, pointsToFix, type OpenPoint } from "./report-summary";

interface OpenPointsProps {
  readonly report: FilledReport;
  /** Everything as it is now has been sent. */
  readonly isSent?: boolean;
}

/** What needs fixing, is asked or is missing in a report. None of it prevents sending. */
export function OpenPoints({ report, isSent = false }: OpenPointsProps) {
  const faults = pointsToFix(report);
  const questions = openQuestions(report);
  const missing = notMeasured(report);
  return (
    <>
      {faults.length === 0 ? null : (
        <Section
          title="Needs fixing"
          intro="These are left out of your report until you fix them. They stay in your draft."
        >
          <PointList points={faults} testerId={report.testerId} sign="▲" />
        </Section>
      )}
      {questions.length === 0 ? null : (
        <Section
          title="Questions still open"
          intro="You can send without answering; the designer then sees the numbers as you typed them."
        >
          <PointList points={questions} testerId={report.testerId} sign="?" />
        </Section>
      )}
      {report.read.report.workedTold === false && !holdsSwatchAlone(report.typed) ? (
        <Section
          title="Did you follow the pattern?"
          intro="You entered no number for some counts and have not said that you followed the pattern there. You can send without saying it; the designer then sees “not told”."
        >
          <ConfirmCounts testerId={report.testerId} />
        </Section>
      ) : null}
      {missing.length === 0 ? null : (
        <p className="mb-8 wrap-anywhere">
          <span className="font-semibold">Not measured:</span>{" "}
          {missing.map(({ id, label }, index) => (
            <span key={id}>
              {index === 0 ? "" : ", "}
              <Link href={`/testing/${report.testerId}/measurements?m=${id}`} prefetch={false} className="text-link">
                {label}
              </Link>
            </span>
          ))}
          . {isSent ? "You can add them and send again." : "You can send now and add the rest later."}
        </p>
      )}
    </>
  );
}

interface PointListProps {
  readonly points: readonly OpenPoint[];
  readonly testerId: string;
  readonly sign: string;
}

function PointList({ points, testerId, sign }: PointListProps) {
  return (
    <ul className="grid gap-3">
      {points.map((point) => (
        <li key={`${point.field} ${point.message}`} className="flex gap-3">
          <span aria-hidden="true" className="w-4 shrink-0 text-center font-semibold text-thread">
            {sign}
          </span>
          <span className="min-w-0 wrap-anywhere">
            <Link href={fieldHref(testerId, point)} prefetch={false} className="text-link font-semibold">
              {point.label}
            </Link>
            <br />
            {point.message}
          </span>
        </li>
      ))}
    </ul>
  );
}

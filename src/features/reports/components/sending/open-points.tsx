import Link from "next/link";
import { parseField, type StepId } from "@/engine/reporting";
import { Section } from "@/ui/section";
import type { FilledReport } from "../../filled-report";
import { notMeasured, openQuestions, toMend, type OpenPoint } from "../../told-report";

/** The page where a step's fields stand. */
const PAGES: Readonly<Record<StepId, string>> = {
  swatch: "swatch",
  make: "counts",
  measure: "measurements",
  yarn: "yarn",
  fit: "fit",
};

/** What is to mend, asked or missing before the report is sent. None of it keeps her from sending. */
export function OpenPoints({ report }: { readonly report: FilledReport }) {
  const faults = toMend(report);
  const questions = openQuestions(report);
  const missing = notMeasured(report);
  return (
    <>
      {faults.length === 0 ? null : (
        <Section
          title="To mend"
          intro="These are left out of what you send until they are mended. They stay in your draft."
        >
          <PointList points={faults} testerId={report.testerId} sign="▲" />
        </Section>
      )}
      {questions.length === 0 ? null : (
        <Section
          title="Questions still open"
          intro="You may send without an answer; the designer sees the numbers as they stand."
        >
          <PointList points={questions} testerId={report.testerId} sign="?" />
        </Section>
      )}
      {missing.length === 0 ? null : (
        <p className="mb-8 wrap-anywhere">
          <span className="font-semibold">Not measured:</span>{" "}
          {missing.map(({ id, label }, at) => (
            <span key={id}>
              {at === 0 ? "" : ", "}
              <Link href={`/testing/${report.testerId}/measurements?m=${id}`} prefetch={false} className="text-link">
                {label}
              </Link>
            </span>
          ))}
          . You may send without, and send the rest later.
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
        <li key={`${point.field} ${point.says}`} className="flex gap-3">
          <span aria-hidden="true" className="w-4 shrink-0 text-center font-semibold text-thread">
            {sign}
          </span>
          <span className="min-w-0 wrap-anywhere">
            <Link href={hrefOf(point, testerId)} prefetch={false} className="text-link font-semibold">
              {point.label}
            </Link>
            <br />
            {point.says}
          </span>
        </li>
      ))}
    </ul>
  );
}

function hrefOf({ field, step }: OpenPoint, testerId: string): string {
  const parsed = parseField(field);
  const which = parsed?.kind === "reading" ? `?m=${parsed.id}` : "";
  return `/testing/${testerId}/${PAGES[step]}${which}#${field}`;
}

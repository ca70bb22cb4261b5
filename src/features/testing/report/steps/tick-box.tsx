import { textOf, type FilledReport } from "../filled-report";
import { TickControl } from "./tick-control";

interface TickBoxProps {
  readonly report: FilledReport;
  readonly field: string;
  readonly label: string;
}

/** A checkbox for yes. */
export function TickBox({ report, field, label }: TickBoxProps) {
  return <TickControl {...{ field, label }} isTicked={textOf(report, field) === "yes"} />;
}

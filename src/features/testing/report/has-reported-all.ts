import type { PatternDocument } from "@/engine/pattern";
import type { ReportInHand } from "./data";

/** Every measurement of a pattern is among those that a report answers: it is read, or changed on purpose. */
export function answersAll(
  answered: readonly string[],
  { measurements }: Pick<PatternDocument, "measurements">,
): boolean {
  return measurements.every(({ id }) => answered.includes(id));
}

/** The tester has sent all of their report, and so has finished. */
export function hasReportedAll({ sent, context }: Pick<ReportInHand, "sent" | "context">): boolean {
  if (sent === null) return false;
  const { readings, changed = [] } = sent.report;
  return answersAll([...readings.map(({ measurement }) => measurement), ...changed], context.pattern);
}

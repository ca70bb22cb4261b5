import type { ReportInHand } from "./data";

/** Every measurement is sent, or changed on purpose: the tester has finished. */
export function hasReportedAll({ sent, savedPattern }: Pick<ReportInHand, "sent" | "savedPattern">): boolean {
  if (sent === null) return false;
  const { readings, changed = [] } = sent.report;
  const answered = new Set([...readings.map(({ measurement }) => measurement), ...changed]);
  return savedPattern.measurements.every(({ id }) => answered.has(id));
}

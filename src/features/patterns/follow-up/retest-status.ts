/** A size that a revision corrected, and who signed it off. */
export interface CorrectedInRevision {
  readonly size: string;
  /** Of the revision that corrected it. */
  readonly revisionNumber: number;
  /** Ids of the measurements that the correction changes. */
  readonly measurements: readonly string[];
  readonly checkedBy: string | null;
  readonly checkedAt: Date | null;
}

/** What testers measured in a size while they followed a revision. */
export interface MeasuredInRevision {
  readonly size: string;
  readonly revisionNumber: number;
  readonly measurements: readonly string[];
}

/** A measurement that the newest results of a test find different from the pattern. */
export interface OffInResults {
  readonly size: string;
  readonly measurement: string;
  /** The revision that the results are of. */
  readonly revisionNumber: number;
}

/**
 * - `due`: nobody has measured it since.
 * - `checked`: signed off by name, and not measured since.
 * - `off`: measured on the corrected revision, and still different.
 * - `retested`: measured on the corrected revision, and nothing of it is different.
 */
export type RetestStatus = "due" | "checked" | "off" | "retested";

/** The one rule of whether a corrected size has been tested again: every measurement that the correction changes, by reports on that revision or a later one. */
export function retestStatus(
  corrected: CorrectedInRevision,
  { measured, off }: { readonly measured: readonly MeasuredInRevision[]; readonly off: readonly OffInResults[] },
): RetestStatus {
  const isOfThis = (of: { readonly size: string; readonly revisionNumber: number }) =>
    of.size === corrected.size && of.revisionNumber >= corrected.revisionNumber;
  const reports = measured.filter(isOfThis);
  const found = new Set(reports.flatMap(({ measurements }) => measurements));
  if (reports.length === 0 || !corrected.measurements.every((id) => found.has(id)))
    return corrected.checkedBy === null ? "due" : "checked";
  const isOff = off.some((cell) => isOfThis(cell) && corrected.measurements.includes(cell.measurement));
  return isOff ? "off" : "retested";
}

import type { PatternDocument } from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import type { ProgressRow } from "./progress-data";

export type ProgressState =
  | "invited"
  | "accepted"
  | "swatch in"
  | "making"
  | "reported in part"
  | "reported"
  | "stopped"
  | "declined"
  | "withdrawn"
  | "lapsed";

/** What the designer may have to do something about, the most urgent first. */
export type Need = "stuck" | "stopped" | "late" | "lapsed" | "off gauge" | "silent" | "behind";

export interface Progress {
  readonly row: ProgressRow;
  readonly state: ProgressState;
  readonly needs: readonly Need[];
  /** Days since she was last heard of; null for one who is not at work. */
  readonly silentDays: number | null;
  /** What her gauge alone does to the measurement that it moves most, beyond one tolerance of it. */
  readonly offGauge: { readonly label: string; readonly cm: number } | null;
}

/** Days without a word after which one asks; common practice, no source. */
export const SILENT_DAYS = 10;
const DAY_MS = 24 * 60 * 60 * 1_000;
const ORDER: readonly Need[] = ["stuck", "stopped", "late", "lapsed", "off gauge", "silent", "behind"];

/** Where each tester is, and what needs the designer; those who need her first. */
export function progressOf(rows: readonly ProgressRow[], pattern: PatternDocument, now: Date): Progress[] {
  const all = rows.map((row): Progress => {
    const state = progressState(row, pattern, now);
    const silentDays = isAtWork(state) ? silentFor(row, now) : null;
    const offGauge = offGaugeOf(row, pattern);
    return { row, state, silentDays, offGauge, needs: needsOf({ row, state, silentDays, offGauge }, now) };
  });
  return all.toSorted((left, right) => urgency(left) - urgency(right));
}

function urgency({ needs }: Progress): number {
  const [first] = needs;
  return first === undefined ? ORDER.length : ORDER.indexOf(first);
}

export function progressState(row: ProgressRow, pattern: PatternDocument, now: Date): ProgressState {
  if (row.stoppedAt !== null) return "stopped";
  if (row.withdrawnAt !== null) return "withdrawn";
  if (row.declinedAt !== null) return "declined";
  if (row.report !== null) return isWhole(row.report.document, pattern) ? "reported" : "reported in part";
  if (row.acceptedAt === null) return row.endsAt !== null && row.endsAt <= now ? "lapsed" : "invited";
  if (row.draft?.hasMore) return "making";
  return row.draft?.hasSwatch ? "swatch in" : "accepted";
}

function isAtWork(state: ProgressState): boolean {
  return state === "accepted" || state === "swatch in" || state === "making" || state === "reported in part";
}

type Document = NonNullable<ProgressRow["report"]>["document"];

/** Every measurement is read, or made otherwise on purpose. */
function isWhole({ readings, changed = [] }: Document, { measurements }: PatternDocument): boolean {
  const told = new Set([...readings.map(({ measurement }) => measurement), ...changed]);
  return measurements.every(({ id }) => told.has(id));
}

function silentFor({ acceptedAt, milestone, draft, report }: ProgressRow, now: Date): number {
  const heard = [acceptedAt, milestone?.at, draft?.updatedAt, report?.sentAt].map((at) => at?.getTime() ?? 0);
  return Math.max(0, Math.floor((now.getTime() - Math.max(...heard)) / DAY_MS));
}

function needsOf({ row, state, silentDays, offGauge }: Omit<Progress, "needs">, now: Date): Need[] {
  const atWork = isAtWork(state);
  const says = (word: string) => atWork && row.milestone?.word === word;
  const holds: Readonly<Record<Need, boolean>> = {
    stuck: says("stuck"),
    stopped: state === "stopped" && row.report === null,
    late: atWork && isLate(row, state, now),
    lapsed: state === "lapsed",
    "off gauge": offGauge !== null && state !== "stopped",
    silent: silentDays !== null && silentDays >= SILENT_DAYS,
    behind: says("behind"),
  };
  return ORDER.filter((need) => holds[need]);
}

function isLate({ dates }: ProgressRow, state: ProgressState, now: Date): boolean {
  if (dates === null || state === "reported in part") return false;
  return dates.reportBy.at <= now || (state === "accepted" && dates.swatchBy.at <= now);
}

function offGaugeOf({ report, size, code }: ProgressRow, pattern: PatternDocument): Progress["offGauge"] {
  const known = pattern.sizes.some(({ id }) => id === size);
  if (report === null || report.document.swatches.length === 0 || !known || report.document.size !== size) return null;
  const { measurements } = predict({ pattern, size, tester: { id: code, ...report.document } });
  const moved = measurements.flatMap(({ measurement, workedCm, predictedCm }) => {
    const found = pattern.measurements.find(({ id }) => id === measurement);
    const cm = predictedCm - workedCm;
    return found === undefined || Math.abs(cm) <= found.toleranceCm
      ? []
      : [{ label: found.label, cm, inTolerances: Math.abs(cm) / found.toleranceCm }];
  });
  const [most] = moved.toSorted((left, right) => right.inTolerances - left.inTolerances);
  return most === undefined ? null : { label: most.label, cm: most.cm };
}

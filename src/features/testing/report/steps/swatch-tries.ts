import { keysOf, parseField, settledCounts, swatchOutlook, type SwatchOutlook } from "@/engine/reporting";
import { chooseSwatch } from "@/engine/prediction";
import type { Fabric, Swatch } from "@/engine/pattern";
import type { FilledReport } from "../filled-report";

/** One of a tester's swatches as its page shows it. */
export interface SwatchTry {
  readonly key: string;
  /** 1 for the oldest. */
  readonly number: number;
  /** Null while its numbers are incomplete or faulty. */
  readonly outcome: {
    readonly swatch: Swatch;
    readonly fabric: Fabric;
    /** It is the swatch that counts for its fabric. */
    readonly counts: boolean;
    /** There are other complete swatches of the same fabric. */
    readonly hasOthers: boolean;
    /** Null while a question about the swatch is open: advice on numbers that are in doubt could contradict the question. */
    readonly outlook: SwatchOutlook | null;
  } | null;
}

/** The tester's swatches, oldest first, at least one; one more if the address asks for it. */
export function swatchTries(report: FilledReport, added: string | undefined): SwatchTry[] {
  const { read, typed } = report;
  const keys = keysOf(typed, "swatch");
  const shown = [...new Set([...(keys.length === 0 ? ["1"] : keys), ...(added === undefined ? [] : [added])])];
  return shown.map((key, index) => {
    const swatch = read.report.swatches[read.keys.swatches.indexOf(key)];
    return { key, number: index + 1, outcome: swatch === undefined ? null : outcomeOf(swatch, key, report) };
  });
}

function outcomeOf(swatch: Swatch, key: string, report: FilledReport): SwatchTry["outcome"] {
  const { read, context } = report;
  const { swatches } = read.report;
  const fabric = context.pattern.fabrics.find(({ id }) => id === swatch.fabric);
  const outlook = swatchOutlook(swatch, {
    context,
    worked: { ...read.report, worked: settledCounts(read, context) },
  });
  if (fabric === undefined || outlook === undefined) return null;
  const counts = chooseSwatch(swatches, fabric.id) === swatch;
  const hasOthers = swatches.some((other) => other !== swatch && other.fabric === fabric.id);
  return { swatch, fabric, counts, hasOthers, outlook: isAsked(key, report) ? null : outlook };
}

/** Whether a question about the swatch waits for the tester's answer. */
function isAsked(key: string, { questions }: FilledReport): boolean {
  return questions.some((question) => {
    const field = parseField(question.field);
    return field?.kind === "swatch" && field.key === key;
  });
}

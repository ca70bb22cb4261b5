import type { PatternDocument } from "@/engine/pattern";
import { fieldOf, keysOf } from "@/engine/reporting";
import { isBlank, textOf, type FilledReport } from "../filled-report";

/** A yarn of the pattern, and the keys of the tester's entries for it. */
export interface YarnItem {
  readonly yarn: PatternDocument["yarns"][number];
  readonly keys: readonly string[];
}

/** Every yarn of the pattern with at least one entry; one more if the address asks for it. */
export function yarnItems(
  report: FilledReport,
  added: { readonly yarn: string; readonly key: string } | null,
): YarnItem[] {
  const { yarns } = report.context.pattern;
  const keys = keysOf(report.typed, "yarn");
  const taken = new Set(keys);
  return yarns.map((yarn, index) => {
    const own = keys.filter((key) => {
      const field = fieldOf.yarn(key, "yarn");
      return isBlank(report, field) ? yarns.length === 1 : textOf(report, field) === yarn.id;
    });
    const first = own.length === 0 ? [freeKey(String(index + 1), taken)] : own;
    const more = added?.yarn === yarn.id && !own.includes(added.key) ? [added.key] : [];
    return { yarn, keys: [...first, ...more] };
  });
}

/** The same on every device, so that two devices that start a yarn at the same time share the entry. */
function freeKey(wanted: string, taken: ReadonlySet<string>): string {
  return taken.has(wanted) ? freeKey(`${wanted}x`, taken) : wanted;
}

import type { TypedReport } from "@/engine/reporting";

/** Names of the fields in which two reports differ; a blank field counts as missing. */
export function changedFields(left: TypedReport, right: TypedReport): string[] {
  const fields = new Set([...Object.keys(left), ...Object.keys(right)]);
  return [...fields].filter((field) => (left[field] ?? "").trim() !== (right[field] ?? "").trim());
}

/** What was typed is what was sent last. */
export function isSentUnchanged({
  sent,
  changed,
}: {
  readonly sent: unknown;
  readonly changed: readonly string[];
}): boolean {
  return sent !== null && changed.length === 0;
}

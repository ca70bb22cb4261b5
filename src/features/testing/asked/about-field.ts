import { ownValue } from "@/engine/pattern";
import { fieldOf, keysOf, parseField, type StepId, type TypedReport } from "@/engine/reporting";

/**
 * What is typed about the number of a field, in one line: `54, flat`, or `54, flat and 55, flat` where it was measured again;
 * `22 stitches over 10, 30 rows over 10`. A later line that differs answers a question about the number.
 */
export function aboutField(name: string, typed: TypedReport): string {
  const field = parseField(name);
  const textOf = (other: string) => (ownValue(typed, other) ?? "").trim();
  switch (field?.kind) {
    case "reading": {
      const readings = keysOf(typed, { reading: field.id }).map((key) => {
        const part = (one: "value" | "way") => textOf(fieldOf.reading(field.id, key, one));
        return part("value") === "" ? "" : [part("value"), part("way")].filter((text) => text !== "").join(", ");
      });
      return readings.filter((text) => text !== "").join(" and ");
    }
    case "swatch": {
      const part = (one: "stitches" | "across" | "rows" | "along") => textOf(fieldOf.swatch(field.key, one));
      return `${part("stitches")} stitches over ${part("across")}, ${part("rows")} rows over ${part("along")}`;
    }
    default:
      return textOf(name);
  }
}

/** The page with a step's fields. */
const PAGES: Readonly<Record<StepId, string>> = {
  swatch: "swatch",
  make: "counts",
  measure: "measurements",
  yarn: "yarn",
  fit: "fit",
};

/** The page with a step's fields, opened at one of them. */
export function fieldHref(
  testerId: string,
  { field, step }: { readonly field: string; readonly step: StepId },
): string {
  const parsed = parseField(field);
  const which = parsed?.kind === "reading" ? `?m=${parsed.id}` : "";
  return `/testing/${testerId}/${PAGES[step]}${which}#${field}`;
}

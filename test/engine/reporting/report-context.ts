import type { ReportContext } from "@/engine/reporting";
import { patternDocument } from "../../factories/pattern";

/** The simple pattern's small size, with two yarns, a length and two places of the body; by design bust 100, length 40. */
export function reportContext(change: Partial<ReportContext> = {}): ReportContext {
  const unit = change.unit ?? "cm";
  return {
    pattern: patternDocument({
      bodyMeasurements: [{ id: "bust", label: "Bust", how: "Around." }],
      lengths: [{ id: "rib", label: "Rib", cm: 5 }],
      yarns: [
        { id: "wool", label: "Wool", metresPerBall: 160, gramsPerBall: 50 },
        { id: "trim", label: "Trim", metresPerBall: 100, gramsPerBall: 25 },
      ],
      pieces: [
        {
          id: "body",
          label: "Body",
          fabric: "main",
          made: 2,
          yarn: "wool",
          sections: [{ from: "width", to: "width", rows: "height" }],
        },
      ],
    }),
    size: "small",
    unit,
    formatLength: (cm) => (unit === "in" ? `${(cm / 2.54).toFixed(1)} in` : `${cm.toFixed(1)} cm`),
    ...change,
  };
}

/** A whole washed swatch as typed. */
export function typedSwatch(change: Readonly<Record<string, string>> = {}, key = "1"): Record<string, string> {
  const parts = { toolMm: "4", stitches: "20", across: "10", rows: "25", along: "10", washed: "yes", ...change };
  return Object.fromEntries(Object.entries(parts).map(([part, text]) => [`swatch.${key}.${part}`, text]));
}

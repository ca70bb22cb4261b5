import { viewFacts, type DrawingView } from "@/engine/garment-view";
import { formatLength } from "@/ui/format-length";

/** A length in both units: `46.0 cm (18 1/8 in)`. */
function bothUnits(cm: number): string {
  return `${formatLength(cm, "cm")} (${formatLength(cm, "in")})`;
}

/** Description of a drawing for those who do not see it, lengths in both units. */
export function viewWords(view: DrawingView): string {
  const { piece, tapes } = view;
  const said = viewFacts(view).map(({ what, parts, note }) =>
    [`${what}: ${parts.map(({ cm, says }) => `${bothUnits(cm)} ${says}`).join(", ")}.`, note]
      .filter((words) => words !== null)
      .join(" "),
  );
  const measured = tapes.map(
    ({ letter, label, cm }) => `${letter}: ${label}${cm === null ? "" : `, ${bothUnits(cm)}`}.`,
  );
  const whole = piece === null ? ["Laid flat, the sleeves folded."] : [];
  return [...whole, ...said, ...measured].join(" ");
}

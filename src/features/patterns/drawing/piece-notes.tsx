import type { PieceShape } from "@/engine/drawing";
import { markSign } from "./shape-copy";

/** Notes on what the schematic cannot show exactly. Errors of a part are shown beside the part. */
export function PieceNotes({ shape: { isToScale, sketchReasons, marks } }: { readonly shape: PieceShape }) {
  if (sketchReasons.length === 0) return null;
  const steps = marks.filter(({ kind }) => kind === "step");
  return (
    <div className="mt-4 text-sm">
      <p className="font-semibold">{isToScale ? "Sketch" : "Sketch, not to scale"}</p>
      <ul className="mt-1 grid gap-1 text-soft wrap-anywhere">
        {isToScale ? null : sketchReasons.map((says) => <li key={says}>{says}</li>)}
        {marks.length > steps.length ? (
          <li>
            <Sign kind="fault" />A dashed edge is shown straight because of the problem noted beside the part.
          </li>
        ) : null}
        {steps.map(({ message }) => (
          <li key={message}>
            <Sign kind="step" />
            {message}
          </li>
        ))}
      </ul>
    </div>
  );
}

function Sign({ kind }: { readonly kind: "fault" | "step" }) {
  return (
    <span aria-hidden="true" className="font-bold text-thread">
      {markSign(kind)}{" "}
    </span>
  );
}

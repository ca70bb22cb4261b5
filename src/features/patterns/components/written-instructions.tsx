import type { ReactNode } from "react";
import { readInstructions } from "@/engine/instructions";

interface WrittenInstructionsProps {
  readonly text: string;
  /** What stands under a passage, by its number. */
  readonly under?: ReadonlyMap<number, ReactNode>;
}

/** The written instructions as the designer wrote them, with headings and steps drawn as such. */
export function WrittenInstructions({ text, under }: WrittenInstructionsProps) {
  return (
    <div className="instructions">
      <div>
        {readInstructions(text).map(({ kind, lead, text: words }, index) => (
          <div key={index}>
            {kind === "heading" ? (
              <h3 dir="auto">{words}</h3>
            ) : kind === "paragraph" ? (
              <p dir="auto">{words}</p>
            ) : (
              <p dir="auto" className="step">
                {lead.trim() === "" ? null : <span>{/^[-*]$/.test(lead.trim()) ? "•" : lead.trim()}</span>}
                <span>{words}</span>
              </p>
            )}
            {under?.get(index)}
          </div>
        ))}
      </div>
    </div>
  );
}

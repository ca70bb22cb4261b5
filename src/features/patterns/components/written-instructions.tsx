import { readInstructions } from "@/engine/instructions";

/** The written instructions as the designer wrote them, with headings and steps drawn as such. */
export function WrittenInstructions({ text }: { readonly text: string }) {
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
          </div>
        ))}
      </div>
    </div>
  );
}

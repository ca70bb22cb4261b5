import type { InstructionBlock } from "@/engine/instructions";
import { surroundingsOf } from "../group-by-place";

interface QuotedPlaceProps {
  readonly text: string;
  /** Null if the text no longer contains the passage. */
  readonly block: InstructionBlock | null;
  /** The original words, and their revision. */
  readonly was: { readonly words: string; readonly revisionNumber: number };
}

/** A passage of the instructions in its context, or its words in an earlier revision. */
export function QuotedPlace({ text, block, was }: QuotedPlaceProps) {
  if (block === null)
    return (
      <blockquote className="self-start border-l-4 border-dashed border-line-strong pl-4">
        <p className="text-sm text-soft">
          From revision {was.revisionNumber}; the newest revision no longer has this passage:
        </p>
        <p dir="auto" className="font-serif text-lg wrap-anywhere">
          {was.words}
        </p>
      </blockquote>
    );
  const { heading, before, after } = surroundingsOf(text, block);
  return (
    <blockquote className="self-start border-l-4 border-line-strong pl-4">
      {heading === null ? null : (
        <p dir="auto" className="text-sm font-semibold text-soft wrap-anywhere">
          {heading}
        </p>
      )}
      <Beside text={before} />
      <p dir="auto" className="whitespace-pre-line font-serif text-lg wrap-anywhere">
        {block.text}
      </p>
      <Beside text={after} />
    </blockquote>
  );
}

function Beside({ text }: { readonly text: string | null }) {
  if (text === null) return null;
  return (
    <p dir="auto" className="line-clamp-1 font-serif text-soft wrap-anywhere">
      {text}
    </p>
  );
}

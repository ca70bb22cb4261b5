import type { ReactNode } from "react";
import { readInstructions, type InstructionBlock } from "@/engine/instructions";
import { blockAnchor } from "../place-key";
import { BlockText, type OwnSize } from "./block-text";

interface InstructionsTextProps {
  readonly text: string;
  readonly size: OwnSize;
  /** What stands below a block: what was said of it, and the ways to say something. */
  readonly below: (block: InstructionBlock) => ReactNode;
}

/** The written instructions, block by block, each with an address of its own. */
export function InstructionsText({ text, size, below }: InstructionsTextProps) {
  return (
    <div className="instructions">
      {readInstructions(text).map((block) => (
        <div key={block.place.block} id={blockAnchor(block.place)}>
          <Block block={block} size={size} />
          {below(block)}
        </div>
      ))}
    </div>
  );
}

function Block({ block: { kind, text, lead }, size }: { readonly block: InstructionBlock; readonly size: OwnSize }) {
  if (kind === "heading") return <h3 dir="auto">{text}</h3>;
  const words = <BlockText text={text} size={size} />;
  if (kind === "paragraph") return <p dir="auto">{words}</p>;
  const mark = lead.trim();
  return (
    <p dir="auto" className="step">
      {mark === "" ? null : <span>{mark === "*" || mark === "-" ? "•" : mark}</span>}
      <span>{words}</span>
    </p>
  );
}

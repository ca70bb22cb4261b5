"use client";

import type { ReactNode } from "react";
import { LinkArea } from "@/ui/link-area";
import type { PlaceQuery } from "../place-query";
import { beginningOf, type ShownBlock } from "../shown-block";
import { BlockText } from "./block-text";

interface InstructionsTextProps {
  readonly blocks: readonly ShownBlock[];
  /** What is shown below a block, by its key: questions, trouble spots and the open form. */
  readonly below: Readonly<Record<string, ReactNode>>;
  /** The block that a form is open for; null for none. */
  readonly saying: string | null;
  /** The page that opens a form; null if nothing can be sent. */
  readonly sayHref: string | null;
}

/**
 * The written instructions, block by block, each with an address of its own. A client component, so that its hundreds of
 * blocks are sent once, as text, and not again as elements.
 */
export function InstructionsText({ blocks, below, saying, sayHref }: InstructionsTextProps) {
  return (
    <LinkArea className="instructions">
      {blocks.map((block) => (
        <div key={block.key} id={`place-${block.key}`}>
          <Block block={block} />
          {below[block.key]}
          {sayHref === null || saying === block.key ? null : <SayLinks block={block} sayHref={sayHref} />}
        </div>
      ))}
    </LinkArea>
  );
}

function Block({ block: { kind, mark, pieces } }: { readonly block: ShownBlock }) {
  const words = <BlockText pieces={pieces} />;
  if (kind === "heading") return <h3 dir="auto">{words}</h3>;
  if (kind === "paragraph") return <p dir="auto">{words}</p>;
  return (
    <p dir="auto" className="step">
      {mark === "" ? null : <span>{mark}</span>}
      <span>{words}</span>
    </p>
  );
}

/** Links to ask a question and to report a problem. */
function SayLinks({ block, sayHref }: { readonly block: ShownBlock; readonly sayHref: string }) {
  const about = <span className="sr-only">{`: ${beginningOf(block)}`}</span>;
  const address = (say: PlaceQuery["say"]) => `${sayHref}?place=${block.key}&say=${say}#place-${block.key}`;
  return (
    <p className="say">
      <a href={address("question")}>Ask about this{about}</a>
      <a href={address("trouble")}>Something went wrong here{about}</a>
    </p>
  );
}

"use client";

import type { ReactNode } from "react";
import { LinkArea } from "@/ui/link-area";
import type { PlaceQuery } from "../place-query";
import { beginningOf, type ShownBlock } from "../shown-block";
import { BlockText } from "./block-text";

interface InstructionsTextProps {
  readonly blocks: readonly ShownBlock[];
  /** What stands below a block, by its key: what was said of it, and what is being said. */
  readonly below: Readonly<Record<string, ReactNode>>;
  /** The block of which something is being said; null for none. */
  readonly saying: string | null;
  /** The page that says something of a place; null where nothing can be said. */
  readonly sayHref: string | null;
}

/**
 * The written instructions, block by block, each with an address of its own. Drawn in the browser too, for then its
 * hundreds of blocks are sent once as words and not a second time as elements.
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

/** The two ways to say something of a place. */
function SayLinks({ block, sayHref }: { readonly block: ShownBlock; readonly sayHref: string }) {
  const about = <span className="sr-only">{`: ${beginningOf(block)}`}</span>;
  const address = (say: PlaceQuery["say"]) => `${sayHref}?place=${block.key}&say=${say}#place-${block.key}`;
  return (
    <p className="say">
      <a href={address("question")}>Ask about this place{about}</a>
      <a href={address("trouble")}>Something went wrong here{about}</a>
    </p>
  );
}

"use client";

import { useState, type MouseEvent, type ReactNode } from "react";
import { LinkArea } from "@/ui/link-area";
import { useOwnPlace } from "../../reading/use-own-place";
import { beginningOf, type ShownBlock } from "../shown-block";
import { BlockText } from "./block-text";
import { PassageControls } from "./passage-controls";
import { PassageList } from "./passage-list";

interface InstructionsTextProps {
  readonly testerId: string;
  readonly blocks: readonly ShownBlock[];
  /** What is shown below a block, by its key: questions, trouble spots and the open form. */
  readonly below: Readonly<Record<string, ReactNode>>;
  /** The block that a form is open for; null for none. */
  readonly saying: string | null;
  /** The page that opens a form; null if nothing can be sent. */
  readonly sayHref: string | null;
}

/**
 * The written instructions, block by block, each with an address of its own. A tap on a passage shows what can be done there;
 * the list above does the same for a keyboard and without scripts. A client component, so that its hundreds of blocks are sent
 * once, as text, and not again as elements.
 */
export function InstructionsText({ testerId, blocks, below, saying, sayHref }: InstructionsTextProps) {
  const [tapped, setTapped] = useState<string | null>(null);
  const [own, setOwn] = useOwnPlace(
    testerId,
    blocks.map(({ key }) => key),
  );
  const onClick = ({ target }: MouseEvent) => {
    const passage = passageOf(target);
    if (passage !== null) setTapped(passage === tapped ? null : passage);
  };
  const mark = (key: string | null) => {
    setOwn(key);
    setTapped(null);
  };
  return (
    <>
      <PassageList blocks={blocks} sayHref={sayHref} own={own} onMark={mark} />
      <LinkArea className="instructions">
        <div onClick={onClick}>
          {blocks.map((block) => (
            <div key={block.key} id={`place-${block.key}`} data-passage={block.key} data-own={block.key === own}>
              {block.key === own ? <OwnMark /> : null}
              <Block block={block} />
              {tapped === block.key ? (
                <PassageControls
                  passage={block.key}
                  about={beginningOf(block)}
                  isOwn={block.key === own}
                  sayHref={saying === block.key ? null : sayHref}
                  onMark={mark}
                />
              ) : null}
              {below[block.key]}
            </div>
          ))}
        </div>
      </LinkArea>
    </>
  );
}

/** The passage whose words were tapped; null for a control, a note, or words that are being selected. */
function passageOf(target: EventTarget): string | null {
  if (!(target instanceof Element) || getSelection()?.isCollapsed === false) return null;
  const words = target.closest("[data-passage] > :is(p, h3)");
  return words?.parentElement?.dataset.passage ?? null;
}

function OwnMark() {
  return (
    <span className="own-place">
      <span aria-hidden="true">▸ </span>You are here
    </span>
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

"use client";

import type { RowNoun, SizedSection } from "@/engine/shaping";
import { partWords } from "../drawing/piece-copy";
import { useEditing } from "./editing";

interface SectionSaysProps {
  readonly sized: readonly SizedSection[] | undefined;
  readonly noun: RowNoun;
}

/** How a section is worked in the chosen size, and the other sizes in which it does not fit. */
export function SectionSummary({ sized, noun }: SectionSaysProps) {
  const { size: chosen, pattern, unit } = useEditing("size", "pattern", "unit");
  const inSize = sized?.find(({ size }) => size === chosen);
  const labelOf = (id: string) => pattern.sizes.find((size) => size.id === id)?.label ?? id;
  if (sized === undefined || inSize === undefined) {
    return <p className="mt-3 text-sm text-soft">Choose its counts to see how it is worked.</p>;
  }
  const others = sized.filter((entry) => entry.size !== chosen && isWrong(entry)).map(({ size }) => labelOf(size));
  return (
    <div className="numbers mt-3 text-sm" aria-live="polite">
      {inSize.counts === null ? null : (
        <p className="text-soft">
          {labelOf(chosen)}: {partWords(inSize.counts, { lengths: undefined, noun, unit })}.
        </p>
      )}
      {isWrong(inSize) ? (
        <p className="font-semibold text-thread">▲ {inSize.message}</p>
      ) : (
        <p className={inSize.counts === null ? "text-soft" : "font-semibold"}>{inSize.message}</p>
      )}
      {others.length > 0 ? (
        <p className="mt-1 text-thread">
          ▲ {isWrong(inSize) ? "It does not fit either" : "It does not fit"} in {others.join(", ")}.
        </p>
      ) : null}
    </div>
  );
}

function isWrong({ shaping: { status } }: SizedSection): boolean {
  return status === "fault" || status === "unsaid";
}

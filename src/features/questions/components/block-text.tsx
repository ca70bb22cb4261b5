import { markSizeNumbers, type Segment } from "@/engine/instructions";

/** Which of how many sizes is hers. */
export interface OwnSize {
  readonly count: number;
  /** From 0. */
  readonly at: number;
}

/** A piece of the instructions with the numbers of one size marked; the others stay, and can be read. */
export function BlockText({ text, size }: { readonly text: string; readonly size: OwnSize }) {
  return markSizeNumbers(text, size.count, size.at).map((segment, at) => (
    <SegmentText key={at} segment={segment} at={size.at} />
  ));
}

function SegmentText({ segment, at }: { readonly segment: Segment; readonly at: number }) {
  switch (segment.kind) {
    case "text":
      return segment.text;
    case "unsure":
      return (
        <>
          <span className="numbers">{segment.text}</span>
          <span className="font-sans text-sm italic text-soft"> (not one number a size)</span>
        </>
      );
    case "sizes":
      return (
        <span className="sizes">
          {joinedParts(segment.parts, at).map(({ text, isOwn }, part) =>
            isOwn ? <OwnNumber key={part} text={text} isNone={segment.isNone} /> : text,
          )}
        </span>
      );
  }
}

type SizePart = Extract<Segment, { kind: "sizes" }>["parts"][number];

/** What stands between the reader's numbers as one text: React marks where each text begins, which weighs more than most. */
function joinedParts(parts: readonly SizePart[], at: number): readonly { text: string; isOwn: boolean }[] {
  const joined: { text: string; isOwn: boolean }[] = [];
  for (const { text, size } of parts) {
    const [last, isOwn] = [joined.at(-1), size === at];
    if (last === undefined || isOwn || last.isOwn) joined.push({ text, isOwn });
    else last.text += text;
  }
  return joined;
}

function OwnNumber({ text, isNone }: { readonly text: string; readonly isNone: boolean }) {
  return (
    <mark>
      <span className="sr-only">for your size: {isNone ? "none " : ""}</span>
      {text}
    </mark>
  );
}

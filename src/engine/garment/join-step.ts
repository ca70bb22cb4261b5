import type { StepOf } from "../pattern";
import { withNoun } from "../shaping";
import { nextCopies } from "./copies";
import { placeOf, type Frame } from "./frame";
import type { GarmentWork } from "./garment-work";
import { centredColumns, isRound, makePart, stitchWidthCm, type LivePart } from "./live-part";
import { fromRightToLeft, movedColumns, SAME_CM, topOf, type Column } from "./profile";

/** A part in its place among those it is joined with, in needle order: how many stitches lie to the right of it. */
interface Joined {
  readonly part: LivePart;
  readonly before: number;
}

/**
 * Joins parts into one, in needle order, with new stitches between neighbours (in the round: after the last one too). In the
 * piece that they are worked in their fabric goes on; parts of it that were started apart are placed side by side. In another
 * piece the stitches begin anew.
 */
export function joinStep(work: GarmentWork, step: StepOf<"join">, copy: number): void {
  const piece = work.piece(step.as);
  const named = nextCopies(step.parts).flatMap((ref) => {
    const part = work.usablePart(step, ref.part, work.copyOf(ref, step, copy));
    return part === undefined ? [] : [part];
  });
  if (piece === undefined || named.length === 0) return;
  const isSwapped = work.isSwapped(step, { piece, copy });
  const parts = isSwapped ? named.toReversed() : named;
  if (new Set(parts).size < parts.length)
    return work.fault(step.id, "The same stitches are joined twice. Name each part once, or its copy.");
  const existing = work.part(step.as, copy);
  if (existing !== undefined && existing.state !== "ended" && !parts.includes(existing))
    return work.fault(step.id, `There are stitches “${step.as}” already. Give these another name.`);
  const between = betweenOf(work, step, parts.length);
  const { joined, stitches } = inOrder(parts, isSwapped ? swappedBetween(between, parts.length) : between);
  for (const part of parts) Object.assign(part, { state: "ended", lastStep: step.id });
  const own = parts.filter((part) => part.piece === piece && part.copy === copy);
  const fabric = own[0]?.fabric ?? piece.fabric;
  const sized = { worked: step.worked, stitches };
  const made = makePart({
    ...{ id: step.as, copy, piece, fabric, ...sized, step: step.id },
    ...(own.length === 0 ? anew(work, { fabric, ...sized }) : goingOn(work, { joined, own, ...sized })),
  });
  for (const { part, before } of joined)
    for (const [marker, position] of part.markers) made.markers.set(marker, before + position);
  work.setPart(made);
}

/** In the mirror image neighbours come in the other order; the place after the last one stays the last. */
function swappedBetween(between: readonly number[], parts: number): number[] {
  return [...between.slice(0, parts - 1).toReversed(), ...between.slice(parts - 1)];
}

/** As many numbers as there are places between the parts; a fault where the step names more. */
function betweenOf(work: GarmentWork, step: StepOf<"join">, parts: number): number[] {
  const numbers = (step.between ?? []).map((number) => work.number(step, number));
  const places = step.worked === "flat" ? parts - 1 : parts;
  if (numbers.length > places)
    work.fault(
      step.id,
      `${numbers.length} numbers of new stitches are given, and ${parts === 1 ? "1 part has" : `${parts} parts have`} ${places} ${places === 1 ? "place" : "places"} between them. Leave out what is too much.`,
    );
  return Array.from({ length: places }, (_, place) => numbers[place] ?? 0);
}

function inOrder(parts: readonly LivePart[], between: readonly number[]): { joined: Joined[]; stitches: number } {
  let stitches = 0;
  const joined = parts.map((part, index) => {
    const before = stitches;
    stitches += part.stitches + (between[index] ?? 0);
    return { part, before };
  });
  return { joined, stitches };
}

type Sized = Pick<LivePart, "worked" | "stitches">;

function anew(work: GarmentWork, { fabric, ...sized }: Sized & { readonly fabric: string }) {
  const stitchCm = stitchWidthCm(sized, work.numbers.stitchCm(fabric));
  return { columns: centredColumns(sized.stitches * stitchCm) };
}

function goingOn(
  work: GarmentWork,
  { joined, own, ...sized }: Sized & { joined: readonly Joined[]; own: readonly LivePart[] },
) {
  const [first] = own;
  const widthCm = sized.stitches * stitchWidthCm(sized, work.numbers.stitchCm(first?.fabric ?? ""));
  const row = Math.max(...own.map((part) => part.row));
  const nextSide = first?.nextSide ?? "right";
  const seats = joined
    .filter(({ part }) => own.includes(part))
    .map(({ part, before }) => ({ part, rightCm: widthCm / 2 - before * work.numbers.stitchCm(part.fabric) }));
  return { row, nextSide, ...(isRound(sized) ? inTheRound(own, widthCm) : sideBySide(seats, widthCm)) };
}

interface Seat {
  readonly part: LivePart;
  /** Where its right edge comes to lie, from the middle of all, cm. */
  readonly rightCm: number;
}

/** Stitches between two parts begin at the height of the higher one. */
function sideBySide(seats: readonly Seat[], widthCm: number): { frame: Frame; columns: Column[] } {
  const { frame, topCm, middleCm } = commonFrame(
    seats.map(({ part, rightCm }) => ({ part, middleCm: rightCm - (part.rightCm - part.leftCm) / 2 })),
  );
  const columns: Column[] = [];
  let edgeCm = middleCm + widthCm / 2;
  for (const { part, rightCm } of seats) {
    const { yCm } = placeOf(part.frame);
    const placed = movedColumns(part.columns, middleCm + rightCm - part.rightCm, yCm);
    const gapCm = edgeCm - (middleCm + rightCm);
    if (gapCm > SAME_CM) columns.push({ leftCm: middleCm + rightCm, rightCm: edgeCm, topCm });
    columns.push(...placed.toReversed());
    edgeCm = middleCm + rightCm - (part.rightCm - part.leftCm);
  }
  const leftCm = middleCm - widthCm / 2;
  if (edgeCm - leftCm > SAME_CM) columns.push({ leftCm, rightCm: edgeCm, topCm });
  return { frame, columns: fromRightToLeft(columns) };
}

function inTheRound(own: readonly LivePart[], widthCm: number): { frame: Frame; columns: Column[] } {
  const { frame, topCm, middleCm } = commonFrame(own.map((part) => ({ part, middleCm: 0 })));
  return { frame, columns: [{ leftCm: middleCm - widthCm / 2, rightCm: middleCm + widthCm / 2, topCm }] };
}

/**
 * The frame in which the parts lie, the height that they reach, and their middle in it. Parts of one frame stay where they are;
 * those of several are placed in a new one about its middle, so that their last rows are level.
 */
function commonFrame(places: readonly { part: LivePart; middleCm: number }[]) {
  const placed = places.map(({ part, middleCm }) => ({ part, middleCm, ...placeOf(part.frame) }));
  const topCm = Math.max(...placed.map(({ part, yCm }) => topOf(part.columns) + yCm));
  const roots = new Map(placed.map((place) => [place.root, place]));
  const [only] = roots.keys();
  if (roots.size === 1 && only !== undefined) {
    const edges = placed.flatMap(({ part, xCm }) => [part.leftCm + xCm, part.rightCm + xCm]);
    return { frame: only, topCm, middleCm: (Math.min(...edges) + Math.max(...edges)) / 2 };
  }
  const frame: Frame = { in: null };
  for (const [root, { part, middleCm, xCm, yCm }] of roots) {
    const isCm = (part.leftCm + part.rightCm) / 2 + xCm;
    root.in = { frame, xCm: middleCm - isCm, yCm: topCm - (topOf(part.columns) + yCm) };
  }
  return { frame, topCm, middleCm: 0 };
}

/** What is wrong with the number of stitches of two parts that are worked together. */
export function unequalText(one: LivePart, other: LivePart): string {
  return `“${one.id}” has ${withNoun(one.stitches, "stitch")} and “${other.id}” ${other.stitches}; stitch by stitch they must have as many. Change one of them.`;
}

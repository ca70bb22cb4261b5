import type { GarmentPiece, Worked } from "../pattern";
import type { Frame } from "./frame";
import { fitColumns, type Column } from "./profile";

/** What lies along an edge, made by one step: row ends, bound-off or cast-on stitches, held stitches, and its length. */
export interface EdgeRun {
  readonly step: string;
  readonly rows: number;
  readonly stitches: number;
  readonly held: number;
  readonly lengthCm: number;
  /** Where it begins and ends, in the frame of its part. */
  readonly from: Spot;
  readonly to: Spot;
}

/** A place in a frame, cm. */
export interface Spot {
  readonly xCm: number;
  readonly yCm: number;
}

type Mutable<Type> = { -readonly [Key in keyof Type]: Type[Key] };

/** A side edge: its runs up to the last row, where that row ends, and what was bound off or held at it since. */
export interface SideEdge {
  /** Rows that end straight above each other are in one. */
  readonly runs: (Mutable<EdgeRun> & { readonly isStraight: boolean })[];
  end: Spot;
  since: { readonly step: string; readonly stitches: number; readonly held: number };
}

/** Live stitches that are worked together, in one copy of a piece. Lengths in cm, x to the right from the piece's centre line. */
export interface LivePart {
  readonly id: string;
  readonly copy: number;
  readonly piece: GarmentPiece;
  /** Left and right are swapped in it. */
  readonly isMirrored: boolean;
  readonly frame: Frame;
  /** The step that made it, and the last that it took part in. */
  readonly madeBy: string;
  lastStep: string;
  worked: Worked;
  fabric: string;
  state: "live" | "held" | "ended";
  stitches: number;
  leftCm: number;
  rightCm: number;
  columns: readonly Column[];
  /** Rows so far, those of the part it was divided from among them. */
  row: number;
  /** Of the work, as the next row is worked. */
  nextSide: "right" | "wrong";
  /** Stitches to the right of each marker. */
  readonly markers: Map<string, number>;
  readonly sides: { readonly left: SideEdge; readonly right: SideEdge };
  readonly bottom: EdgeRun[];
  readonly top: EdgeRun[];
  /** Whether it is already known that its stitches do not come out. */
  isFaulty: boolean;
}

export function isRound({ worked }: Pick<LivePart, "worked">): boolean {
  return worked !== "flat";
}

/** Rounds are drawn as a tube laid flat, half as wide as they are round. */
export function stitchWidthCm(part: Pick<LivePart, "worked">, stitchCm: number): number {
  return isRound(part) ? stitchCm / 2 : stitchCm;
}

type Placed = Pick<LivePart, "id" | "copy" | "piece" | "worked" | "fabric" | "stitches"> & {
  readonly step: string;
  readonly columns: readonly Column[];
  readonly frame?: Frame | undefined;
  readonly row?: number;
  readonly nextSide?: LivePart["nextSide"];
};

/** @param placed where its stitches lie: columns from left to right, at least one. */
export function makePart({ id, copy, piece, worked, fabric, stitches, ...placed }: Placed): LivePart {
  const { step, columns, frame = { in: null }, row = 0, nextSide = "right" } = placed;
  const [first, last] = [columns[0], columns.at(-1)];
  const [leftCm, rightCm] = [first?.leftCm ?? 0, last?.rightCm ?? 0];
  return {
    id,
    copy,
    piece,
    isMirrored: isMirroredCopy(piece, copy),
    frame,
    madeBy: step,
    lastStep: step,
    worked,
    fabric,
    state: "live",
    stitches,
    leftCm,
    rightCm,
    columns,
    row,
    nextSide,
    markers: new Map(),
    sides: { left: newSide(leftCm, first?.topCm ?? 0), right: newSide(rightCm, last?.topCm ?? 0) },
    bottom: [],
    top: [],
    isFaulty: false,
  };
}

function newSide(xCm: number, yCm: number): SideEdge {
  return { runs: [], end: { xCm, yCm }, since: { step: "", stitches: 0, held: 0 } };
}

/** Every second copy of a mirrored piece is worked as the mirror image of the first. */
export function isMirroredCopy({ mirrored = false }: GarmentPiece, copy: number): boolean {
  return mirrored && copy % 2 === 0;
}

/** Columns of a first row or cast-on edge, its middle on the centre line. */
export function centredColumns(widthCm: number): Column[] {
  return [{ leftCm: -widthCm / 2, rightCm: widthCm / 2, topCm: 0 }];
}

/** The ends of a part's stitches, at the height of its outermost columns. */
export function endsOf({ columns }: Pick<LivePart, "columns">): { readonly from: Spot; readonly to: Spot } {
  const [first, last] = [columns[0], columns.at(-1)];
  return {
    from: { xCm: first?.leftCm ?? 0, yCm: first?.topCm ?? 0 },
    to: { xCm: last?.rightCm ?? 0, yCm: last?.topCm ?? 0 },
  };
}

/** Sets the edges of a part's stitches, cm. */
export function setSpan(part: LivePart, leftCm: number, rightCm: number): void {
  part.columns = fitColumns(part.columns, leftCm, rightCm);
  part.leftCm = leftCm;
  part.rightCm = rightCm;
}

/** Makes a part as wide as so many stitches of a width, its middle where it was. */
export function setWidth(part: LivePart, widthCm: number): void {
  const middleCm = (part.leftCm + part.rightCm) / 2;
  setSpan(part, middleCm - widthCm / 2, middleCm + widthCm / 2);
}

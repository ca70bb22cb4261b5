import type { EdgeRef, GarmentPiece, GarmentStep, PatternDocument, Requirement, StepNumber, StepOf } from "../pattern";
import { GarmentWork, partKey } from "./garment-work";
import { constantNumber, countedNumber, isConstant, sumOf, type LinearNumber } from "./linear-number";
import { isMirroredCopy } from "./live-part";

/** A sum of counts; null where it is none. */
export type Amount = LinearNumber | null;
type Side = "left" | "right";

/** What a step asks of a number. */
export interface Asked {
  /** Id of the step; null of a seam. */
  readonly step: string | null;
  readonly number: Amount;
  readonly asks: Requirement;
  readonly message: string;
}

/** What one step leaves along an edge. */
export interface EdgeAmount {
  readonly step: string;
  readonly rows: Amount;
  readonly stitches: Amount;
  readonly held: Amount;
  /** Of stitches that lie level beside each other. */
  readonly fabric?: string | null;
}

/** Live stitches that are worked together. */
export interface RunPart {
  readonly id: string;
  readonly copy: number;
  readonly piece: GarmentPiece;
  readonly worked: StepOf<"start">["worked"];
  fabric: string;
  stitches: Amount;
  /** Whether the next row shows the right side; null where that depends on the counts. */
  isRightNext: boolean | null;
  /** Whether its stitches surely end at one height. */
  isLevel: boolean;
  readonly sides: Readonly<Record<Side, EdgeAmount[]>>;
  readonly bottom: EdgeAmount[];
  readonly top: EdgeAmount[];
}

export const NOTHING = constantNumber(0);

/** A garment of one size while its steps are worked with sums of counts in the place of numbers. */
export class StitchRun {
  readonly asked: Asked[] = [];
  /** Order, pieces and copies are those of the garment as it is worked; none of its numbers are used. */
  readonly work: GarmentWork;
  private readonly labels: ReadonlyMap<string, string>;
  private readonly parts = new Map<string, RunPart>();
  /** Edges that a step made and named. */
  private readonly madeEdges = new Map<string, EdgeAmount[]>();

  constructor(pattern: PatternDocument, size: string) {
    this.work = new GarmentWork(pattern, size);
    this.labels = new Map(pattern.counts.map(({ id, label }) => [id, label]));
  }

  /** @param step null of a seam. */
  ask(step: GarmentStep | null, number: Amount, asks: Requirement, message: string): void {
    if (number === null) return;
    const label = step === null ? "Seam" : (step.label ?? this.work.piece(step.in.part)?.label ?? step.id);
    this.asked.push({ step: step?.id ?? null, number, asks, message: `${label}: ${message}` });
  }

  /** The number of a step, which has to come out whole. */
  amount(step: GarmentStep, number: StepNumber): LinearNumber {
    if (typeof number === "number") return constantNumber(number);
    const counted = countedNumber(number.count, number.times, number.over);
    if (counted.over > 1)
      this.ask(step, counted, { multipleOf: 1, remainder: 0 }, `${this.text(counted)} must be whole`);
    return counted;
  }

  rowsOf(step: StepOf<"work">, fabric: string): LinearNumber {
    const { rows } = step;
    if (typeof rows === "object" && "length" in rows)
      return constantNumber(this.work.numbers.rowsOf(rows, fabric).value);
    return this.amount(step, rows);
  }

  /** Such as “2 × “Decreases” + 3”. */
  text(amount: LinearNumber): string {
    const { weights, constant, over } = amount;
    const terms = [...weights].map(([count, weight]) => {
      const name = `“${this.labels.get(count) ?? count}”`;
      return { isLess: weight < 0, text: Math.abs(weight) === 1 ? name : `${Math.abs(weight)} × ${name}` };
    });
    if (constant !== 0 || terms.length === 0) terms.push({ isLess: constant < 0, text: String(Math.abs(constant)) });
    const sum = terms
      .toSorted((one, other) => Number(one.isLess) - Number(other.isLess))
      .map(({ isLess, text }, index) => (index === 0 ? `${isLess ? "−" : ""}${text}` : `${isLess ? "−" : "+"} ${text}`))
      .join(" ");
    if (over === 1) return sum;
    return terms.length === 1 ? `${sum} ÷ ${over}` : `(${sum}) ÷ ${over}`;
  }

  part(id: string, copy: number): RunPart | undefined {
    return this.parts.get(partKey(id, copy));
  }

  setPart(given: Omit<RunPart, "sides" | "bottom" | "top">): RunPart {
    const part = { ...given, sides: { left: [], right: [] }, bottom: [], top: [] };
    this.parts.set(partKey(given.id, given.copy), part);
    return part;
  }

  /** Notes rows that are worked over a whole part. */
  workRows(part: RunPart, step: GarmentStep, rows: Amount): void {
    for (const side of Object.values(part.sides)) side.push({ step: step.id, rows, stitches: NOTHING, held: NOTHING });
    if (part.worked === "round" || part.worked === "spiral") return;
    const odd = isOdd(rows);
    part.isRightNext = odd === null || part.isRightNext === null ? null : part.isRightNext !== odd;
  }

  addEdge(edge: string, copy: number, run: EdgeAmount): void {
    const key = partKey(edge, copy);
    this.madeEdges.set(key, [...(this.madeEdges.get(key) ?? []), run]);
  }

  /** What lies along an edge; null where it is not known, or only a stretch of it is meant. */
  edge({ edge, copy, from = 0, to = 1 }: EdgeRef, step: GarmentStep, ownCopy: number): EdgeAmount | null {
    if (from > 0 || to < 1) return null;
    const of = this.work.plan.edgeParts.get(edge) ?? "";
    const inCopy = copy ?? this.work.copyOf({ part: of }, step, ownCopy);
    const runs = this.madeEdges.get(partKey(edge, inCopy)) ?? this.listedEdge(edge, inCopy);
    if (runs === null) return null;
    const sum = (key: "rows" | "stitches" | "held") => sumOf(...runs.map((run) => run[key]));
    return { step: step.id, rows: sum("rows"), stitches: sum("stitches"), held: sum("held") };
  }

  /** A whole edge that the end of a part made, its stitches side by side; null where it is not known to be. */
  topEdge({ edge, copy = 1, from = 0, to = 1 }: EdgeRef): EdgeAmount | null {
    const [run, ...others] = this.madeEdges.get(partKey(edge, copy)) ?? [];
    return run?.fabric && others.length === 0 && from === 0 && to === 1 ? run : null;
  }

  private listedEdge(id: string, copy: number): readonly EdgeAmount[] | null {
    const listed = this.work.plan.listedEdges.get(id);
    const part = listed && this.part(listed.part, copy);
    if (listed === undefined || part === undefined) return null;
    const runs = sideOf(part, listed.side);
    if (listed.steps === undefined) return runs;
    const [from, to] = listed.steps;
    const first = runs.findIndex(({ step }) => step === from);
    const last = runs.findLastIndex(({ step }) => step === to);
    return first < 0 || last < first ? null : runs.slice(first, last + 1);
  }
}

function sideOf(part: RunPart, side: "left" | "right" | "top" | "bottom"): readonly EdgeAmount[] {
  if (side === "top" || side === "bottom") return part[side];
  if (!isMirroredCopy(part.piece, part.copy)) return part.sides[side];
  return part.sides[side === "left" ? "right" : "left"];
}

function isOdd(number: Amount): boolean | null {
  if (number === null || number.over !== 1) return null;
  return [...number.weights.values()].some((weight) => weight % 2 !== 0) ? null : number.constant % 2 !== 0;
}

/** Whether it is surely nothing. */
export function isNothing(number: Amount): boolean {
  return number !== null && isConstant(number) && number.constant === 0;
}

/** Whether it is surely more than nothing, where no count of it is. */
export function isSome(number: Amount): boolean {
  if (number === null || number.constant < 0) return false;
  return [...number.weights.values()].every((weight) => weight > 0) && !isNothing(number);
}

import {
  homeOfStep,
  type Garment,
  type GarmentPiece,
  type GarmentStep,
  type PatternDocument,
  type StepNumber,
  type StepPart,
} from "../pattern";
import { withNoun } from "../shaping";
import { planOf, type GarmentPlan } from "./garment-plan";
import { isMirroredCopy, type EdgeRun, type LivePart } from "./live-part";
import { sizeNumbers, type SizeNumbers } from "./size-numbers";

/** What is wrong with a garment in a size, in sentences, at the step or the seam (by index) that it shows at. */
export interface GarmentFault {
  readonly step: string | null;
  readonly seam: number | null;
  readonly size: string;
  readonly message: string;
}

/**
 * Rows of a part that are alike and follow each other, in its frame. `stitches` are live, `worked` those that each row was
 * worked over: fewer in a short row; `stitchCm2` the area of one.
 */
export interface WorkedRows {
  readonly part: LivePart;
  readonly step: string;
  readonly fabric: string;
  /** Number of the first of them. */
  readonly first: number;
  readonly rows: number;
  readonly stitches: number;
  readonly worked: number;
  readonly stitchCm2: number;
  readonly leftCm: number;
  readonly rightCm: number;
  readonly isRound: boolean;
}

/** Fabric of a part between two edges, rows of the same width in one, in its frame, cm. */
export interface Block {
  readonly part: LivePart;
  readonly leftCm: number;
  readonly rightCm: number;
  readonly bottomCm: number;
  topCm: number;
}

/** What a step leaves on the needle. */
export interface StepResult {
  /** Stitches of each part that it is worked in or makes, 0 where they are bound off or worked together with others. */
  readonly onNeedle: readonly { readonly part: string; readonly stitches: number }[];
  /** Number of the last row of its part. */
  readonly row: number;
}

/** Rows of all parts of a garment in one size that are worked at most: those of a carpet of fine lace, twice over. */
const MAX_ROWS = 100_000;

/** A garment of one size while its steps are worked. */
export class GarmentWork {
  readonly garment: Garment;
  readonly plan: GarmentPlan;
  readonly numbers: SizeNumbers;
  readonly parts = new Map<string, LivePart>();
  readonly rows: WorkedRows[] = [];
  readonly blocks: Block[] = [];
  /** By step id, what its first copy leaves. */
  readonly results = new Map<string, StepResult>();
  /** Edges that a step made and named. */
  readonly madeEdges = new Map<string, EdgeRun[]>();
  readonly faults: GarmentFault[] = [];
  private readonly told = new Set<string>();
  private rowsLeft = MAX_ROWS;
  private isOver = false;

  constructor(
    pattern: PatternDocument,
    readonly size: string,
  ) {
    this.garment = pattern.garment;
    this.numbers = sizeNumbers(pattern, size);
    this.plan = planOf(pattern.garment);
  }

  /** Says what is wrong, once where several copies have it. */
  fault(step: string | null, message: string, seam: number | null = null): void {
    const key = `${step} ${seam} ${message}`;
    if (this.told.has(key)) return;
    this.told.add(key);
    this.faults.push({ step, seam, size: this.size, message });
  }

  /** The number of a step; a fault, and the nearest whole number, where it does not come out whole. */
  number(step: GarmentStep, number: StepNumber): number {
    const { value, message } = this.numbers.numberOf(number);
    if (message !== null) this.fault(step.id, message);
    return value;
  }

  /** The piece that a part belongs to. */
  piece(part: string): GarmentPiece | undefined {
    return this.plan.pieceOf.get(part);
  }

  /** Copies of a piece that are worked one by one; the others are like the first of their hand. */
  copiesOfPiece(piece: GarmentPiece): readonly number[] {
    return this.plan.copies.get(piece.id) ?? [1];
  }

  /** The copies in which a step is worked: a join in those of the part that it makes. */
  copiesOfStep(step: GarmentStep): readonly number[] {
    const piece = this.piece(homeOfStep(step));
    const { part, copy } = step.in;
    if (copy !== undefined && this.piece(part) === piece) return [copy];
    return piece === undefined ? [1] : this.copiesOfPiece(piece);
  }

  /** The copy that is meant where none is said: the step's own in its own piece, else the first. */
  copyOf({ part, copy }: StepPart, step: GarmentStep, ownCopy: number): number {
    if (copy !== undefined) return copy;
    return this.piece(part)?.id === this.piece(homeOfStep(step))?.id ? ownCopy : 1;
  }

  part(id: string, copy: number): LivePart | undefined {
    return this.parts.get(partKey(id, copy));
  }

  setPart(part: LivePart): void {
    this.parts.set(partKey(part.id, part.copy), part);
  }

  /** A part whose stitches are on the needle or held; a fault of the step where there is none. */
  usablePart(step: GarmentStep, id: string, copy: number): LivePart | undefined {
    const part = this.part(id, copy);
    if (part !== undefined && part.state !== "ended") return part;
    if (part === undefined) this.fault(step.id, `There are no stitches “${id}” yet. ${this.hint(id)}`);
    else
      this.fault(
        step.id,
        `“${id}” has no stitches left after step “${part.lastStep}”. Name a part that is still on the needle.`,
      );
    return undefined;
  }

  private hint(id: string): string {
    const maker = this.garment.steps.find((step) => step.do === "start" && step.in.part === id);
    return maker === undefined
      ? "Start them, or divide or join others into them."
      : `Step “${maker.id}” starts them, and could not be worked before this one.`;
  }

  /** Whether it has too many rows, so that nothing more is worked. */
  get hasTooManyRows(): boolean {
    return this.isOver;
  }

  /** How many of so many rows, each over so many columns, may still be worked; a fault of the step where it is not all. */
  takeRows(step: string, rows: number, columns: number): number {
    const taken = Math.min(rows, Math.floor(this.rowsLeft / columns));
    this.rowsLeft -= taken * columns;
    if (taken < rows) {
      this.fault(
        step,
        `The garment has more than ${withNoun(MAX_ROWS, "row")}, and the rest is left out. Check its rows.`,
      );
      this.isOver = true;
    }
    return taken;
  }

  /** Whether left and right of a step mean the other side in this copy: a step of all copies is told for the first. */
  isSwapped({ in: { copy } }: GarmentStep, part: Pick<LivePart, "piece" | "copy">): boolean {
    return copy === undefined && isMirroredCopy(part.piece, part.copy);
  }

  addToEdge(edge: string, copy: number, run: EdgeRun): void {
    const key = partKey(edge, copy);
    const runs = this.madeEdges.get(key);
    if (runs === undefined) this.madeEdges.set(key, [run]);
    else runs.push(run);
  }
}

/** Key of a part or an edge in one copy. */
export function partKey(id: string, copy: number): string {
  return `${id} ${copy}`;
}

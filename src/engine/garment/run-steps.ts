import type { GarmentStep, Requirement, StepOf, StepShape } from "../pattern";
import { nextCopies } from "./copies";
import { constantNumber, difference, isConstant, productOf, sumOf, times } from "./linear-number";
import { askLeft, askRoom } from "./run-asks";
import { askAlike, pickUp } from "./run-edges";
import { isNothing, isSome, NOTHING, type Amount, type RunPart, type StitchRun } from "./stitch-run";

const AT_LEAST_0: Requirement = { min: 0, max: Infinity };
const EQUAL: Requirement = { min: 0, max: 0 };
const SIGN = { "bind-off": -1, hold: -1, leave: -1, add: 1, decrease: -1, increase: 1 } as const;
const ONE = constantNumber(1);

/** Works all steps of a garment with sums of counts, so that `run.asked` has what they and its seams ask. */
export function runSteps(run: StitchRun): void {
  const { steps, seams } = run.work.garment;
  for (const index of run.work.plan.order) {
    const step = steps[index];
    if (step !== undefined) for (const copy of run.work.copiesOfStep(step)) runStep(run, step, copy);
  }
  for (const seam of seams) askAlike(run, seam);
}

function runStep(run: StitchRun, step: GarmentStep, copy: number): void {
  if (step.do === "start") return start(run, step, copy);
  if (step.do === "join") return join(run, step, copy);
  const part = run.part(step.in.part, copy);
  if (part === undefined) return;
  switch (step.do) {
    case "work":
      return workEven(run, part, step);
    case "section":
      return section(run, part, step);
    case "add":
    case "bind-off":
    case "hold":
    case "leave":
      return atEdge(run, part, step);
    case "short-rows":
      return shortRows(run, part, step);
    case "mark":
      if (step.at !== "start-of-round")
        askRoom(run, step, { needs: run.amount(step, step.at), has: part.stitches, what: "the marker’s place" });
      return;
    case "divide":
      return divide(run, part, step);
    case "end":
      return end(run, part, step);
    case "unmark":
      return;
  }
}

function start(run: StitchRun, step: StepOf<"start">, copy: number): void {
  const piece = run.work.piece(step.in.part);
  if (piece === undefined || copy > piece.made || run.part(step.in.part, copy) !== undefined) return;
  const stitches = run.amount(step, step.stitches);
  const { how, worked } = step;
  const isRightNext = how !== "pick-up" || worked === "round" || worked === "spiral";
  const part = run.setPart({
    id: step.in.part,
    copy,
    piece,
    worked,
    fabric: piece.fabric,
    stitches,
    isRightNext,
    isLevel: true,
  });
  part.bottom.push({ step: step.id, rows: NOTHING, stitches, held: NOTHING });
  if (how === "foundation") run.workRows(part, step, ONE);
  if (how === "pick-up") pickUp(run, step, { copy, stitches });
}

function join(run: StitchRun, step: StepOf<"join">, copy: number): void {
  const piece = run.work.piece(step.as);
  const parts = nextCopies(step.parts).flatMap((ref) => run.part(ref.part, run.work.copyOf(ref, step, copy)) ?? []);
  const [first] = parts;
  if (piece === undefined || first === undefined) return;
  const places = step.worked === "flat" ? parts.length - 1 : parts.length;
  const between = (step.between ?? []).slice(0, places).map((number) => run.amount(step, number));
  const stitches = sumOf(...parts.map((part) => part.stitches), ...between);
  const own = parts.find((part) => part.piece === piece && part.copy === copy);
  const { fabric, isRightNext } = own ?? { fabric: piece.fabric, isRightNext: true };
  const isLevel = parts.length === 1 && first.isLevel;
  run.setPart({ id: step.as, copy, piece, worked: step.worked, fabric, stitches, isRightNext, isLevel });
}

function workEven(run: StitchRun, part: RunPart, step: StepOf<"work">): void {
  part.fabric = step.fabric ?? part.fabric;
  const rows = run.rowsOf(step, part.fabric);
  if (isSome(rows)) askLeft(run, part, step, 1);
  const changes = (step.shape ?? []).map((shape) => {
    const { times: often, rows: needs } = shapeRows(run, step, shape);
    if (!isNothing(often)) askRoom(run, step, { needs, has: rows, what: "shaping", noun: "rows" });
    const once = productOf(run.amount(step, shape.stitches), often);
    return {
      shape,
      once,
      isBeforeEnd: isSome(difference(rows, needs)),
      all: times(once, SIGN[shape.as] * (shape.at === "both" ? 2 : 1)),
    };
  });
  run.workRows(part, step, rows);
  for (const { shape, once } of changes)
    if (shape.as === "bind-off" || shape.as === "add") noteAtEdges(run, part, { step, at: shape.at, stitches: once });
  if (changes.length === 0) return;
  part.stitches = sumOf(part.stitches, ...changes.map(({ all }) => all));
  askLeft(run, part, step, changes.every(({ isBeforeEnd }) => isBeforeEnd) ? 1 : 0);
}

/** How often a shaping is worked, and the rows that it takes. */
function shapeRows(run: StitchRun, step: StepOf<"work">, shape: StepShape): { times: Amount; rows: Amount } {
  const often = run.amount(step, shape.times);
  const every = shape.every === undefined ? times(ONE, shape.everyOther ? 2 : 1) : run.amount(step, shape.every);
  const apart = every !== null && isConstant(every) ? times(ONE, Math.max(every.constant, 1)) : every;
  const first = shape.start === undefined ? apart : run.amount(step, shape.start);
  return { times: often, rows: sumOf(first, productOf(sumOf(often, times(ONE, -1)), apart)) };
}

function section(run: StitchRun, part: RunPart, step: StepOf<"section">): void {
  const [from, to, rows] = [step.from, step.to, step.rows].map((number) => run.amount(step, number));
  if (from === undefined || to === undefined || rows === undefined) return;
  part.fabric = part.piece.fabric;
  part.stitches = to;
  run.workRows(part, step, rows);
  const { shaping } = step;
  const changed = difference(to, from);
  if (shaping === undefined || changed === null || isNothing(changed)) return;
  const atATime = shaping.stitches * (shaping.edges === "both" ? 2 : 1);
  const way = `from ${run.text(from)} to ${run.text(to)} stitches`;
  if (atATime > 1)
    run.ask(step, changed, { multipleOf: atATime, remainder: 0 }, `${way}, ${atATime} go at a time and must come out`);
  const room = times(rows, atATime);
  for (const sign of [1, -1]) {
    const left = difference(room, times(changed, sign * (shaping.everyOther ? 2 : 1)));
    const where = shaping.everyOther ? "every other one of " : "";
    run.ask(
      step,
      left,
      AT_LEAST_0,
      `${way}, shaping ${atATime} at a time must fit into ${where}${run.text(rows)} rows`,
    );
  }
}

function atEdge(run: StitchRun, part: RunPart, step: StepOf<"add" | "bind-off" | "hold" | "leave">): void {
  const often = step.times === undefined ? ONE : run.amount(step, step.times);
  const once = productOf(run.amount(step, step.each), often);
  if (isNothing(once)) return;
  const isFlat = part.worked === "flat";
  const isAtEdge = isFlat && (step.at === "left" || step.at === "right" || step.at === "both");
  const all = times(once, step.at === "both" ? 2 : 1);
  noteAtEdges(run, part, { step, at: step.at, stitches: once, isHeld: step.do === "hold" || step.do === "leave" });
  run.workRows(part, step, isAtEdge ? rowsAtEdge(run, part, step, often) : sumOf(often, times(ONE, -1)));
  part.stitches = sumOf(part.stitches, times(all, SIGN[step.do]));
  askLeft(run, part, step, 0);
  if ((step.do === "add" || step.do === "bind-off") && step.to !== undefined)
    run.addEdge(step.to, part.copy, { step: step.id, rows: NOTHING, stitches: all, held: NOTHING });
  if ((step.do !== "hold" && step.do !== "leave") || step.to === undefined) return;
  const { copy, piece, fabric, isRightNext } = part;
  const isLevel = false;
  const held = run.part(step.to, copy);
  const stitches = held === undefined ? all : sumOf(held.stitches, all);
  if (held === undefined)
    run.setPart({ id: step.to, copy, piece, worked: "flat", fabric, stitches, isRightNext, isLevel });
  else held.stitches = stitches;
}

/** Both edges take a row each in turn; one edge waits for the row that starts there. */
function rowsAtEdge(run: StitchRun, part: RunPart, step: StepOf<"add" | "bind-off" | "hold" | "leave">, often: Amount) {
  if (step.at === "both") return times(often, 2);
  if (part.isRightNext === null) return null;
  const isSwapped = run.work.isSwapped(step, part);
  const isRight = (step.at === "right") !== isSwapped;
  const isNow = part.isRightNext === (step.do === "leave" ? !isRight : isRight);
  return sumOf(times(often, 2), times(ONE, isNow ? -1 : 0));
}

function noteAtEdges(
  run: StitchRun,
  part: RunPart,
  {
    step,
    at,
    stitches,
    isHeld = false,
  }: { step: GarmentStep; at: StepShape["at"]; stitches: Amount; isHeld?: boolean },
): void {
  const swapped = run.work.isSwapped(step, part);
  for (const side of ["left", "right"] as const) {
    const told = swapped ? (side === "left" ? "right" : "left") : side;
    if (at !== "both" && at !== told) continue;
    const [bound, held] = isHeld ? [NOTHING, stitches] : [stitches, NOTHING];
    part.sides[side].push({ step: step.id, rows: NOTHING, stitches: bound, held });
  }
}

function shortRows(run: StitchRun, part: RunPart, step: StepOf<"short-rows">): void {
  const isAtEdge = step.at === "left" || step.at === "right" || step.at === "both";
  const turned = productOf(run.amount(step, step.each), run.amount(step, step.turns));
  if (isNothing(turned)) return;
  const needs = sumOf(times(turned, step.at === "both" ? 2 : 1), times(ONE, isAtEdge ? 1 : 0));
  askRoom(run, step, { needs, has: part.stitches, what: "short rows" });
  Object.assign(part, { isRightNext: null, isLevel: false });
  run.workRows(part, step, null);
}

function divide(run: StitchRun, part: RunPart, step: StepOf<"divide">): void {
  const shares = nextCopies(step.into).map((share) => ({ ...share, stitches: run.amount(step, share.stitches) }));
  const sum = sumOf(...shares.map(({ stitches }) => stitches));
  if (sum !== null && part.stitches !== null) {
    const message = `${run.text(sum)} stitches are divided, which must be all ${run.text(part.stitches)} of them`;
    run.ask(step, difference(part.stitches, sum), EQUAL, message);
  }
  const { isRightNext, isLevel } = part;
  for (const { part: id, copy: said, stitches } of shares) {
    const piece = run.work.piece(id) ?? part.piece;
    const isOwn = piece.id === part.piece.id;
    const copy = said ?? (isOwn ? part.copy : 1);
    const fabric = isOwn ? part.fabric : piece.fabric;
    run.setPart({ id, copy, piece, worked: "flat", fabric, stitches, isRightNext, isLevel });
  }
}

function end(run: StitchRun, part: RunPart, step: StepOf<"end">): void {
  const other = step.with && run.part(step.with.part, run.work.copyOf(step.with, step, part.copy));
  if (other !== undefined && part.stitches !== null && other.stitches !== null) {
    const both = `${run.text(part.stitches)} and ${run.text(other.stitches)}`;
    run.ask(step, difference(part.stitches, other.stitches), EQUAL, `${both} are worked together and must be as many`);
  }
  const isHeld = step.how === "hold";
  const left = {
    ...{ step: step.id, rows: NOTHING },
    ...{ stitches: isHeld ? NOTHING : part.stitches, held: isHeld ? part.stitches : NOTHING },
    fabric: part.isLevel ? part.fabric : null,
  };
  part.top.push(left);
  run.addEdge(step.edge, part.copy, left);
}

import { partsMadeBy, type Garment, type GarmentStep } from "../pattern";

/** Steps by index that make a part, work on it, and use its stitches up, each in the order of the list. */
interface Uses {
  readonly makers: number[];
  readonly workers: number[];
  readonly enders: number[];
}

/**
 * The order in which steps can be worked. Steps of one part follow each other as they are listed, after what makes the part
 * and before what uses its stitches up; a pick-up follows what makes its edges. Otherwise the list's own order is kept.
 *
 * @returns indices of steps in order, and of those that wait for themselves or for such a step.
 * @see Cormen et al., Introduction to Algorithms, topological sort (from memory, not checked).
 */
export function orderSteps(garment: Garment): { readonly order: number[]; readonly waiting: number[] } {
  const needs = prerequisites(garment);
  const followers: number[][] = garment.steps.map(() => []);
  const open = needs.map((steps, index) => {
    for (const step of steps) followers[step]?.push(index);
    return steps.size;
  });
  const ready = open.flatMap((count, index) => (count === 0 ? [index] : []));
  const possible = new Set<number>(ready);
  for (let index = ready.pop(); index !== undefined; index = ready.pop())
    for (const follower of followers[index] ?? []) {
      open[follower] = (open[follower] ?? 0) - 1;
      if (open[follower] !== 0) continue;
      possible.add(follower);
      ready.push(follower);
    }
  return {
    order: listOrder(needs, possible),
    waiting: garment.steps.flatMap((_, index) => (possible.has(index) ? [] : [index])),
  };
}

/** Each step as soon as it is its turn in the list, after what it needs. */
function listOrder(needs: readonly ReadonlySet<number>[], possible: ReadonlySet<number>): number[] {
  const done = new Set<number>();
  for (const index of needs.keys()) {
    if (!possible.has(index)) continue;
    const path = [index];
    for (let step = path.at(-1); step !== undefined; step = path.at(-1)) {
      const missing = [...(needs[step] ?? [])].filter((needed) => !done.has(needed));
      if (missing.length > 0) path.push(...missing.toReversed());
      else done.add(path.pop() ?? step);
    }
  }
  return [...done];
}

function prerequisites(garment: Garment): Set<number>[] {
  const needs = garment.steps.map(() => new Set<number>());
  const uses = usesOfParts(garment);
  const need = (step: number, others: readonly number[]) => {
    for (const other of others) if (other !== step) needs[step]?.add(other);
  };
  for (const { makers, workers, enders } of uses.values()) {
    const firstWorker = workers.slice(0, 1);
    for (const worker of firstWorker) need(worker, makers);
    workers.slice(1).forEach((worker, index) => need(worker, workers.slice(index, index + 1)));
    const last = workers.length > 0 ? workers.slice(-1) : makers;
    for (const ender of enders) need(ender, last);
  }
  const edges = edgesMade(garment, uses);
  garment.steps.forEach((step, index) => {
    if (step.do === "start") for (const { edge } of step.along ?? []) need(index, edges.get(edge) ?? []);
  });
  return needs;
}

function usesOfParts({ steps }: Garment): Map<string, Uses> {
  const uses = new Map<string, Uses>();
  const use = (part: string, as: keyof Uses, index: number) => {
    const found = uses.get(part) ?? { makers: [], workers: [], enders: [] };
    uses.set(part, found);
    found[as].push(index);
  };
  steps.forEach((step, index) => {
    const made = partsMadeBy(step);
    const used = partsUsedBy(step);
    for (const part of new Set(made)) use(part, used.includes(part) ? "workers" : "makers", index);
    for (const part of new Set(used)) {
      if (made.includes(part)) continue;
      use(part, step.do === "start" ? "makers" : isEnd(step) ? "enders" : "workers", index);
    }
  });
  return uses;
}

function partsUsedBy(step: GarmentStep): string[] {
  if (step.do === "join") return step.parts.map(({ part }) => part);
  return step.do === "end" && step.with ? [step.in.part, step.with.part] : [step.in.part];
}

function isEnd(step: GarmentStep): boolean {
  return step.do === "join" || step.do === "divide" || (step.do === "end" && step.how !== "hold");
}

/** Steps after which an edge is whole. */
function edgesMade(garment: Garment, uses: ReadonlyMap<string, Uses>): Map<string, number[]> {
  const named = new Map<string, number[]>();
  const indices = new Map(garment.steps.map(({ id }, index) => [id, index]));
  garment.steps.forEach((step, index) => {
    const edge = step.do === "end" ? step.edge : step.do === "bind-off" || step.do === "add" ? step.to : undefined;
    if (edge === undefined) return;
    const made = named.get(edge);
    if (made === undefined) named.set(edge, [index]);
    else made.push(index);
  });
  for (const { edges } of garment.pieces)
    for (const { id, part, side, steps } of edges) {
      const { makers = [], workers = [], enders = [] } = uses.get(part) ?? {};
      const last = workers.length > 0 ? workers.slice(-1) : makers;
      const until = steps === undefined ? last : [indices.get(steps[1]) ?? -1].filter((index) => index >= 0);
      const made = side === "top" ? enders : side === "bottom" ? makers : until;
      named.set(id, named.get(id) ?? made);
    }
  return named;
}

import {
  countsOfStep,
  edgeMadeBy,
  edgeParts,
  homeOfStep,
  ownValue,
  partsMadeBy,
  type Garment,
  type GarmentStep,
  type PatternDocument,
  type TypedGarment,
  type TypedStep,
} from "../pattern";

export interface NumberedGarment {
  /** The pattern with the steps that can be worked; stitches that an absent step goes on from are held. */
  readonly pattern: PatternDocument;
  /** By id of a step that cannot be worked yet, the labels of its counts without a number; none where it follows such a step. */
  readonly absent: ReadonlyMap<string, readonly string[]>;
}

/**
 * The part of a garment that can be worked in a size although some counts have no number yet: up to the first step of each part
 * that needs one.
 *
 * @param pattern a parsed pattern; counts may be without numbers.
 * @param blocked ids of steps that are left out in any case.
 */
export function withNumbers(
  pattern: PatternDocument,
  size: string,
  blocked: ReadonlySet<string> = new Set(),
): NumberedGarment {
  const { garment, counts } = pattern;
  const labels = new Map(counts.map(({ id, label }) => [id, label]));
  const missing = (step: GarmentStep) =>
    [...new Set(countsOfStep(step))].filter((count) => ownValue(ownValue(pattern.grading, count), size) === undefined);
  const absent = new Map<string, readonly string[]>();
  const isWhole = needed(garment).every((count) => ownValue(ownValue(pattern.grading, count), size) !== undefined);
  if (isWhole && blocked.size === 0) return { pattern, absent };
  for (const step of stepsFrom(garment, (step) => blocked.has(step.id) || missing(step).length > 0))
    absent.set(
      step.id,
      missing(step).map((count) => labels.get(count) ?? count),
    );
  if (absent.size === 0) return { pattern, absent };
  return { pattern: { ...pattern, garment: heldWhere(garment, absent) }, absent };
}

const known = new WeakMap<Garment, readonly string[]>();

/** Counts of all steps of a garment. */
function needed(garment: Garment): readonly string[] {
  const counts = known.get(garment) ?? [...new Set(garment.steps.flatMap(countsOfStep))];
  known.set(garment, counts);
  return counts;
}

/** Steps that are open, and those that go on from what they work. */
export function stepsFrom<Given extends TypedGarment>(
  garment: Given,
  isOpen: (step: Given["steps"][number]) => boolean,
): Given["steps"][number][] {
  const open = new Set<string>();
  const parts = edgeParts(garment);
  return garment.steps.filter((step: Given["steps"][number]) => {
    const needed = [...partsOf(step), ...edgesOf(step).map((edge) => parts.get(edge) ?? "")];
    if (!isOpen(step) && !needed.some((part) => open.has(part))) return false;
    for (const part of [homeOfStep(step), ...partsOf(step), ...partsMadeBy(step)]) open.add(part);
    return true;
  });
}

function partsOf(step: TypedStep): string[] {
  if (step.do === "join") return step.parts.map(({ part }) => part);
  return step.do === "end" && step.with ? [step.in.part, step.with.part] : [step.in.part];
}

function edgesOf(step: TypedStep): string[] {
  return step.do === "start" ? (step.along ?? []).map(({ edge }) => edge) : [];
}

function heldWhere(garment: Garment, absent: ReadonlyMap<string, unknown>): Garment {
  const steps = garment.steps.filter(({ id }) => !absent.has(id));
  const made = new Set(steps.flatMap((step) => (step.do === "start" ? [step.in.part] : partsMadeBy(step))));
  const ended = new Set(steps.flatMap((step) => (step.do === "end" || step.do === "divide" ? [step.in.part] : [])));
  const waiting = garment.steps.flatMap((step) => (absent.has(step.id) ? partsOf(step) : []));
  const held = [...new Set(waiting)].filter((part) => made.has(part) && !ended.has(part));
  const edges = new Set([
    ...garment.pieces.flatMap((piece) => piece.edges.map(({ id }) => id)),
    ...steps.flatMap((step) => edgeMadeBy(step) ?? []),
  ]);
  return {
    ...garment,
    steps: [
      ...steps,
      ...held.map((part) => ({
        ...{ id: `held ${part}`, in: { part }, edge: `held ${part}` },
        ...({ do: "end", how: "hold" } as const),
      })),
    ],
    seams: garment.seams.filter(({ a, b }) => edges.has(a.edge) && edges.has(b.edge)),
  };
}

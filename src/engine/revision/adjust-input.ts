import type { CauseInput } from "../gaps";
import { cmOfSize, ownValue, sizeScale, type CmBySize, type Fabric, type PatternDocument } from "../pattern";

/**
 * A pattern with one of its inputs changed by an amount.
 *
 * An offset, a step or a change from one size upward becomes an allowance of its own in that measurement.
 *
 * @param cause the input; `size` where it is one size's count, or the first size of a change.
 * @param amount in the input's own unit: cm; for settling a relative change of length; for stretch added to the factor; stitches or rows.
 * @param label name of the allowance that an offset, step or change becomes.
 * @returns a new document; the given one is left as it is.
 * @throws {RangeError} where the pattern has no such input.
 * @see docs/method.md#revision.
 */
export function adjustInput(
  pattern: PatternDocument,
  cause: CauseInput,
  amount: number,
  label: string,
): PatternDocument {
  switch (cause.kind) {
    case "allowance":
      return adjustAllowance(pattern, cause.id, amount);
    case "settle":
      return adjustFabrics(pattern, cause, (fabric) => withFactor(fabric, "settles", cause, amount));
    case "stretch":
      return adjustFabrics(pattern, cause, (fabric) => withFactor(fabric, "wornStretch", cause, amount));
    case "count":
      return adjustCount(pattern, cause, amount);
    case "offset":
    case "step":
    case "from":
      return correctMeasurement(pattern, { measurement: cause.id, cm: correctionCm(pattern, cause, amount), label });
    default:
      return cause.kind satisfies never;
  }
}

function adjustAllowance(pattern: PatternDocument, id: string, amount: number): PatternDocument {
  if (!pattern.allowances.some((allowance) => allowance.id === id)) throw new RangeError(`no allowance ${id}`);
  return {
    ...pattern,
    allowances: pattern.allowances.map((allowance) =>
      allowance.id === id ? { ...allowance, cm: plus(allowance.cm, amount) } : allowance,
    ),
  };
}

function plus(cm: CmBySize, amount: number): CmBySize {
  if (typeof cm === "number") return cm + amount;
  return Object.fromEntries(Object.entries(cm).map(([size, value]) => [size, value + amount]));
}

function adjustFabrics(
  pattern: PatternDocument,
  { id }: CauseInput,
  change: (fabric: Fabric) => Fabric,
): PatternDocument {
  return {
    ...pattern,
    fabrics: pattern.fabrics.map((fabric) => (id === "all" || fabric.id === id ? change(fabric) : fabric)),
  };
}

function withFactor(fabric: Fabric, factor: "settles" | "wornStretch", cause: CauseInput, amount: number): Fabric {
  const side = cause.direction === "rows" ? "along" : "across";
  const before = fabric[factor] ?? { across: 1, along: 1 };
  const after = factor === "settles" ? before[side] * (1 + amount) : before[side] + amount;
  return { ...fabric, [factor]: { ...before, [side]: after } };
}

function adjustCount(pattern: PatternDocument, { id, size }: CauseInput, amount: number): PatternDocument {
  const values = ownValue(pattern.grading, id);
  const before = size === undefined ? undefined : ownValue(values, size);
  if (size === undefined || before === undefined) throw new RangeError(`no count ${id} in size ${size}`);
  return { ...pattern, grading: { ...pattern.grading, [id]: { ...values, [size]: before + amount } } };
}

function correctionCm(pattern: PatternDocument, { kind, size }: CauseInput, amount: number): CmBySize {
  if (kind === "offset") return amount;
  const scale = sizeScale(pattern);
  const from = pattern.sizes.findIndex(({ id }) => id === size);
  return Object.fromEntries(
    pattern.sizes.map(({ id }, index) => [
      id,
      kind === "step" ? amount * (scale.get(id) ?? 0) : index >= from ? amount : 0,
    ]),
  );
}

/** Adds to the measurement's correction if it has one, otherwise creates it. */
function correctMeasurement(
  pattern: PatternDocument,
  { measurement, cm, label }: { measurement: string; cm: CmBySize; label: string },
): PatternDocument {
  const id = `correction-${measurement}`.slice(0, 40);
  const before = pattern.allowances.find((allowance) => allowance.id === id);
  if (before) {
    const sums = pattern.sizes.map((size) => [size.id, cmOfSize(before.cm, size.id) + cmOfSize(cm, size.id)] as const);
    const joined = { ...before, cm: Object.fromEntries(sums) };
    return {
      ...pattern,
      allowances: pattern.allowances.map((allowance) => (allowance === before ? joined : allowance)),
    };
  }
  return {
    ...pattern,
    allowances: [...pattern.allowances, { id, label, cm }],
    measurements: pattern.measurements.map((given) =>
      given.id === measurement ? { ...given, terms: [...given.terms, { times: 1, allowance: id }] } : given,
    ),
  };
}

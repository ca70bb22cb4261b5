import { at } from "../linear-algebra";

export interface Evaluation {
  readonly value: number;
  readonly slopes: Float64Array;
  /** Approximate diagonal of the Hessian, above 0: the initial approximation of BFGS. */
  readonly curvatures: Float64Array;
}

/** The evaluation at the minimum, with the status of the search. */
export type Minimum<Found extends Evaluation> = Found & {
  readonly point: Float64Array;
  readonly converged: boolean;
  readonly evaluations: number;
};

const MAX_ITERATIONS = 200;
const MAX_HALVINGS = 12;
const SUFFICIENT_DECREASE = 1e-4;
/** Slopes up to this many tolerances may be due to rounding. */
const ROUNDING_FACTOR = 100;
/** A smaller gain in value is due to rounding. */
const MIN_GAIN = 1e-11;
/** In a log standard deviation: no step changes one by more than a factor of about 7. */
const MAX_STEP = 2;

/**
 * Minimum of a smooth function of a few variables by BFGS with a backtracking line search.
 *
 * @param evaluate value and slopes at a point; null where the function is not defined.
 * @param start a point at which the function is defined.
 * @param tolerance largest absolute slope at convergence.
 * @returns the point, with the slopes there as evidence; `converged` is false if the iterations ran out.
 * @throws {RangeError} if the function is not defined at the start.
 * @see Nocedal & Wright, Numerical Optimization (2nd ed.), algorithm 6.1.
 */
export function minimise<Found extends Evaluation>(
  evaluate: (point: Float64Array) => Found | null,
  start: Float64Array,
  tolerance: number,
): Minimum<Found> {
  const first = evaluate(start);
  if (first === null) throw new RangeError("the start has no value");
  let state: State<Found> = { ...first, point: start };
  let evaluations = 1;
  let inverse: Float64Array | null = null;
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration += 1) {
    if (maxAbs(state.slopes) <= tolerance) return { ...state, converged: true, evaluations };
    const direction = stepDirection(state, inverse);
    const search = lineSearch(evaluate, state, direction);
    evaluations += search.evaluations;
    if (search.next === null) {
      if (inverse === null)
        return { ...state, converged: maxAbs(state.slopes) <= ROUNDING_FACTOR * tolerance, evaluations };
      inverse = null;
      continue;
    }
    const isRounded =
      state.value - search.next.value <= MIN_GAIN && maxAbs(search.next.slopes) <= ROUNDING_FACTOR * tolerance;
    if (isRounded) return { ...search.next, converged: true, evaluations };
    inverse = updatedInverse(inverse, state, search.next);
    state = search.next;
  }
  return { ...state, converged: false, evaluations };
}

type State<Found extends Evaluation> = Found & { readonly point: Float64Array };

function stepDirection({ slopes, curvatures }: Evaluation, inverse: Float64Array | null): Float64Array {
  const size = slopes.length;
  const direction = slopes.map((slope, i) => {
    if (inverse === null) return -slope / at(curvatures, i);
    let sum = 0;
    for (let j = 0; j < size; j += 1) sum -= at(inverse, i * size + j) * at(slopes, j);
    return sum;
  });
  const length = maxAbs(direction);
  return length > MAX_STEP ? direction.map((part) => (part * MAX_STEP) / length) : direction;
}

function lineSearch<Found extends Evaluation>(
  evaluate: (point: Float64Array) => Found | null,
  state: State<Found>,
  direction: Float64Array,
) {
  const slope = dot(direction, state.slopes);
  let evaluations = 0;
  for (let share = 1, halvings = 0; slope < 0 && halvings < MAX_HALVINGS; halvings += 1) {
    const point = state.point.map((value, i) => value + share * at(direction, i));
    const found = evaluate(point);
    evaluations += 1;
    if (found !== null && found.value <= state.value + SUFFICIENT_DECREASE * share * slope + roundOff(state.value)) {
      return { next: { ...found, point }, evaluations };
    }
    share *= found === null ? 0.25 : interpolatedShare(found.value - state.value, share, slope);
  }
  return { next: null, evaluations };
}

/** Minimum of the parabola through the two values and the slope, limited to between a tenth and half of the step. */
function interpolatedShare(rise: number, share: number, slope: number): number {
  const factor = -(slope * share) / (2 * (rise - slope * share));
  return Math.min(0.5, Math.max(0.1, factor));
}

/** Rounding error of sums of this size: a smaller increase is ignored. */
function roundOff(value: number): number {
  return 1e-11 * Math.max(1, Math.abs(value));
}

/** BFGS update of the inverse Hessian, which starts from the curvatures; an update without positive curvature is skipped. */
function updatedInverse(
  inverse: Float64Array | null,
  before: State<Evaluation>,
  after: State<Evaluation>,
): Float64Array | null {
  const size = before.point.length;
  const step = after.point.map((value, i) => value - at(before.point, i));
  const gradientChange = after.slopes.map((value, i) => value - at(before.slopes, i));
  const curvature = dot(step, gradientChange);
  if (curvature <= 1e-12 * Math.sqrt(dot(step, step) * dot(gradientChange, gradientChange))) return inverse;
  const base = inverse ?? inverseDiagonal(before.curvatures);
  const along = gradientChange.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < size; j += 1) sum += at(base, i * size + j) * at(gradientChange, j);
    return sum;
  });
  const factor = (1 + dot(gradientChange, along) / curvature) / curvature;
  return base.map((value, index) => {
    const i = Math.floor(index / size);
    const j = index % size;
    const mixed = at(along, i) * at(step, j) + at(step, i) * at(along, j);
    return value + factor * at(step, i) * at(step, j) - mixed / curvature;
  });
}

function inverseDiagonal(curvatures: Float64Array): Float64Array {
  const size = curvatures.length;
  const inverse = new Float64Array(size * size);
  curvatures.forEach((curvature, i) => {
    inverse[i * size + i] = 1 / curvature;
  });
  return inverse;
}

function maxAbs(values: Float64Array): number {
  return values.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
}

function dot(left: Float64Array, right: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < left.length; i += 1) sum += at(left, i) * at(right, i);
  return sum;
}

/** A sum of counts of one size, exact: (Σ weight × count + constant) ÷ over; whole weights and constant. */
export interface LinearNumber {
  readonly over: number;
  readonly constant: number;
  readonly weights: ReadonlyMap<string, number>;
}

/** What is not a sum of counts, such as a count times a count. */
type Maybe = LinearNumber | null;

export function constantNumber(constant: number, over = 1): LinearNumber {
  return { over, constant, weights: new Map() };
}

/** count × times ÷ over. */
export function countedNumber(count: string, times = 1, over = 1): LinearNumber {
  return { over, constant: 0, weights: new Map([[count, times]]) };
}

export function isConstant({ weights }: LinearNumber): boolean {
  return weights.size === 0;
}

/** @returns null where one of them is. */
export function sumOf(...numbers: readonly Maybe[]): Maybe {
  let sum: LinearNumber = constantNumber(0);
  for (const number of numbers) {
    if (number === null) return null;
    const over = (sum.over / greatestCommonDivisor(sum.over, number.over)) * number.over;
    const [own, other] = [over / sum.over, over / number.over];
    const weights = new Map([...sum.weights].map(([count, weight]) => [count, weight * own]));
    for (const [count, weight] of number.weights) weights.set(count, (weights.get(count) ?? 0) + weight * other);
    sum = {
      over,
      constant: sum.constant * own + number.constant * other,
      weights: new Map([...weights].filter(([, weight]) => weight !== 0)),
    };
  }
  return sum;
}

/** @returns null where one of them is, or neither is the same whatever the counts are. */
export function productOf(one: Maybe, other: Maybe): Maybe {
  if (one === null || other === null) return null;
  if (!isConstant(other)) return isConstant(one) ? productOf(other, one) : null;
  const factor = other.constant;
  return {
    over: one.over * other.over,
    constant: one.constant * factor,
    weights: new Map(factor === 0 ? [] : [...one.weights].map(([count, weight]) => [count, weight * factor])),
  };
}

/** A number times a fraction of two whole ones. */
export function times(number: Maybe, factor: number, over = 1): Maybe {
  return productOf(number, constantNumber(factor, over));
}

export function difference(one: Maybe, other: Maybe): Maybe {
  return sumOf(one, times(other, -1));
}

export function greatestCommonDivisor(one: number, other: number): number {
  let [high, low] = [Math.abs(one), Math.abs(other)];
  while (low > 0) [high, low] = [low, high % low];
  return high;
}

/** A layered graph: its start nodes, and the successors of each node in the next layer. */
export interface LayeredPaths<Node> {
  readonly layers: readonly (readonly Node[])[];
  /** Indices in the first layer. */
  readonly starts: readonly number[];
  /** `next[layer][node]` = indices in the layer after. */
  readonly next: readonly (readonly (readonly number[])[])[];
}

/** Costs that differ by less are equal: sums of doubles depend on their order. */
export const ROUNDING_TOLERANCE = 1e-9;

/**
 * The cheapest paths from the first layer to the last, up to one rounding error per layer; no dead ends remain.
 *
 * @param costOf cost of a node.
 * @returns null if there is no path.
 * @see Bellman's principle of optimality.
 */
export function cheapestPaths<Node>(
  { layers, starts, next }: LayeredPaths<Node>,
  costOf: (node: Node) => number,
): { readonly cost: number; readonly paths: LayeredPaths<Node> } | null {
  let after: readonly number[] | null = null;
  const cheapestNext = layers.map((nodes, layer) => nodes.map((_, node) => next[layer]?.[node] ?? []));
  for (let layer = layers.length - 1; layer >= 0; layer -= 1) {
    const costs: readonly number[] | null = after;
    after = (layers[layer] ?? []).map((node, index) => {
      if (costs === null) return costOf(node);
      const onward = cheapestOf(next[layer]?.[index] ?? [], costs);
      cheapestNext[layer]?.splice(index, 1, onward.indices);
      return costOf(node) + onward.cost;
    });
  }
  const { cost, indices } = cheapestOf(starts, after ?? []);
  return cost === Number.POSITIVE_INFINITY ? null : { cost, paths: { layers, starts: indices, next: cheapestNext } };
}

function cheapestOf(indices: readonly number[], costs: readonly number[]): { cost: number; indices: number[] } {
  let cost = Number.POSITIVE_INFINITY;
  for (const index of indices) cost = Math.min(cost, costs[index] ?? cost);
  if (cost === Number.POSITIVE_INFINITY) return { cost, indices: [] };
  return { cost, indices: indices.filter((index) => (costs[index] ?? Number.NaN) <= cost + ROUNDING_TOLERANCE) };
}

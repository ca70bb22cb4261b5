import highsLoader from "highs";
import type { Solver } from "@/engine/integer-program";

/** A search that needs more nodes is stopped and reports it: the counts of one group take a few hundred. */
const MAX_NODES = 50_000;

/**
 * HiGHS in this thread, exact: its gaps are 0, and every run gives the same result.
 *
 * @param mostSeconds for comparisons: a time limit, with which two runs may differ.
 */
export async function highsSolver({
  maxNodes = MAX_NODES,
  maxSeconds,
}: { readonly maxNodes?: number; readonly maxSeconds?: number } = {}): Promise<Solver> {
  const highs = await highsLoader();
  return (lpText) => {
    const { Status, Columns } = highs.solve(lpText, {
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      random_seed: 1,
      threads: 1,
      mip_max_nodes: maxNodes,
      ...(maxSeconds === undefined ? {} : { time_limit: maxSeconds }),
    });
    // A search that was stopped before finding a solution has columns without values.
    const values = Object.entries(Columns).flatMap(([name, column]) =>
      typeof column.Primal === "number" ? [[name, column.Primal] as const] : [],
    );
    return { status: Status, values: new Map(values) };
  };
}

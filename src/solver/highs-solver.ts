import highsLoader from "highs";
import type { Solver } from "@/engine/integer-program";

/** A search that needs more is stopped, and says so: the counts of one group take a few hundred. */
const MAX_NODES = 50_000;

/**
 * HiGHS in this thread, exact: its gaps are 0, and it answers alike on every run.
 *
 * @param mostSeconds for comparisons: a limit in time, under which two runs may differ.
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
    // A search that was stopped before it met any answer has columns without values.
    const values = Object.entries(Columns).flatMap(([name, column]) =>
      typeof column.Primal === "number" ? [[name, column.Primal] as const] : [],
    );
    return { status: Status, values: new Map(values) };
  };
}

import highsLoader from "highs";
import type { Solver } from "@/engine/integer-program";

/** A search that needs more is stopped, and says so: the counts of one group take a few hundred. */
const MOST_NODES = 50_000;

/** HiGHS in this thread, exact: its gaps are 0, and it answers alike on every run. */
export async function highsSolver(): Promise<Solver> {
  const highs = await highsLoader();
  return (lpText) => {
    const { Status, Columns } = highs.solve(lpText, {
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      random_seed: 1,
      threads: 1,
      mip_max_nodes: MOST_NODES,
    });
    return { status: Status, values: new Map(Object.entries(Columns).map(([name, { Primal }]) => [name, Primal])) };
  };
}

import type { Outlier } from "../gaps";
import type { CallDocument } from "../pattern";
import { yarnNeeds } from "../yarn";
import type { YarnResults } from "./call-results-schema";
import type { TesterResults } from "./tester-results-schema";

/**
 * What each size needs of each yarn, with what its testers used.
 *
 * @param call screened. @param testers of the same analysis. @param suspects of `gaps`.
 */
export function yarnResults(
  call: CallDocument,
  testers: readonly TesterResults[],
  suspects: readonly Outlier[],
): YarnResults {
  return yarnNeeds(call).yarns.map((need) => ({
    ...need,
    fabrics: [...need.fabrics],
    sizes: need.sizes.map((size) => ({ ...size, used: usedOf(testers, { yarn: need.yarn, size: size.size }) })),
    suspects: suspects.filter(({ what, id }) => what === "yarn" && id === need.yarn),
  }));
}

function usedOf(
  testers: readonly TesterResults[],
  of: { readonly yarn: string; readonly size: string },
): YarnResults[number]["sizes"][number]["used"] {
  const used = testers
    .filter(({ size }) => size === of.size)
    .flatMap(({ yarn }) => yarn.filter(({ yarn: id, isSetAside }) => id === of.yarn && !isSetAside))
    .map(({ metres }) => metres)
    .toSorted((left, right) => left - right);
  const [min] = used;
  const max = used.at(-1);
  return min === undefined || max === undefined ? null : { testers: used.length, leastMetres: min, mostMetres: max };
}

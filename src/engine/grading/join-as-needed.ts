import { workRules, type WorkRule } from "../garment";
import { meetsRule, ownValue, type Grading, type PatternDocument } from "../pattern";
import { countGroups, type CountGroup } from "./count-groups";

/**
 * Solves groups of counts apart where the garment allows it. A garment's rules connect nearly all of its counts, and most of
 * them are met without being asked for; so groups are joined only by those rules that the numbers found would break.
 *
 * Exact, because the groups are solved for the same with fewer rules: what is best then and meets the rules is best with them.
 *
 * @param solve of the groups, with those rules of the garment whose counts are all in one group; its gradings may leave counts out.
 * @returns the first answer that is no grading, or whose gradings meet every rule that a solved count has a part in.
 */
export function joinAsNeeded<Answer extends { readonly status: string; readonly gradings?: readonly Grading[] }>(
  pattern: PatternDocument,
  solve: (groups: readonly CountGroup[]) => Answer,
): Answer {
  const joining: WorkRule[] = [];
  for (;;) {
    const groups = countGroups(pattern, joining);
    const answer = solve(groups);
    const solved = new Set(groups.flatMap(({ counts, measurements }) => (measurements.length > 0 ? counts : [])));
    const open = workRules(pattern).filter(
      (rule) => !joining.includes(rule) && rule.numbers.some(({ count }) => solved.has(count)),
    );
    const needed = open.filter((rule) => answer.gradings?.some((grading) => needs({ ...pattern, grading }, rule)));
    if (needed.length === 0) return answer;
    joining.push(...needed);
  }
}

/** Whether numbers break a rule, or leave out the one number that it decides. */
function needs(pattern: PatternDocument, rule: WorkRule): boolean {
  if (!meetsRule(pattern, rule)) return true;
  const size = pattern.sizes[rule.size]?.id ?? "";
  const missing = rule.numbers.filter(({ count }) => ownValue(ownValue(pattern.grading, count), size) === undefined);
  return missing.length === 1 && "min" in rule.requires && rule.requires.min === rule.requires.max;
}

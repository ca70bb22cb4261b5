import type { WorkRule } from "../garment";
import { gradingRulesOf, type Count, type PatternDocument, type Rule } from "../pattern";
import type { Constraint, Sum } from "../integer-program";
import type { CountVariables } from "./count-variables";
import { workRulesOf } from "./work-rules-of";

/** A rule that a grading must meet, as constraints of the integer program and with a sentence for the designer. */
export interface GradingRule {
  readonly rule: Rule["kind"] | WorkRule["kind"];
  /** Of a rule that comes from how a garment is worked, the id of its step; none where it is a seam's. */
  readonly step?: string;
  readonly count?: string;
  readonly size?: string;
  readonly says: string;
  readonly constraints: readonly Constraint[];
}

/** The rules of some counts in all sizes, and what the garment's steps ask of them alone. @see docs/method.md#grading. */
export function gradingRules(
  pattern: PatternDocument,
  counts: readonly Count[],
  variables: CountVariables,
): GradingRule[] {
  const labels = new Map(counts.map(({ id, label }) => [id, `“${label}”`]));
  let multiples = 0;
  return [
    ...gradingRulesOf(pattern, counts).map((rule) => ({
      rule: rule.kind,
      count: rule.kind === "tie" ? rule.tie.count : rule.count.id,
      size: pattern.sizes[rule.size]?.id,
      says: ruleText(rule, { pattern, labelOf: (id) => labels.get(id) ?? `“${id}”` }),
      constraints: constraintsOf(rule, variables, variables.repeatsOf(rule.numbers[0]?.count ?? "", rule.size)),
    })),
    ...workRulesOf(pattern, counts).map((rule) => ({
      rule: rule.kind,
      count: rule.numbers[0]?.count ?? "",
      size: pattern.sizes[rule.size]?.id,
      ...(rule.step === null ? {} : { step: rule.step }),
      says: workRuleText(pattern, rule),
      constraints: constraintsOf(
        rule,
        variables,
        variables.multipleOf("multipleOf" in rule.requires ? multiples++ : multiples),
      ),
    })),
  ];
}

/** A sentence with the size. */
function workRuleText({ sizes }: PatternDocument, { message, size }: WorkRule): string {
  return `${message}, in ${sizes[size]?.label}.`;
}

/** @param multiple variable that says how often, where a rule asks for a multiple. */
function constraintsOf(
  { numbers, requires }: Pick<Rule, "numbers" | "requires">,
  variables: CountVariables,
  multiple: number,
): Constraint[] {
  const sum: Sum = numbers.map(({ count, size: of, weight }) => ({ variable: variables.numberOf(count, of), weight }));
  if ("multipleOf" in requires) {
    const often = { variable: multiple, weight: -requires.multipleOf };
    return [{ sum: [...sum, often], relation: "=", right: requires.remainder }];
  }
  const { min, max } = requires;
  if (min === max) return [{ sum, relation: "=", right: min }];
  const upper: Constraint = { sum, relation: "<=", right: max };
  const lower: Constraint = { sum, relation: ">=", right: min };
  return [...(Number.isFinite(max) ? [upper] : []), ...(Number.isFinite(min) ? [lower] : [])];
}

interface Labels {
  readonly pattern: PatternDocument;
  readonly labelOf: (count: string) => string;
}

function ruleText(rule: Rule, { pattern, labelOf }: Labels): string {
  const inSize = `in ${pattern.sizes[rule.size]?.label}`;
  if (rule.kind === "tie") {
    const { tie } = rule;
    const parts = tie.equals.map(({ times, count }) => timesText(times, labelOf(count))).join(" and ");
    const within = tie.within ?? 0;
    return `${timesText(tie.per ?? 1, labelOf(tie.count))} must add up to ${parts}${within > 0 ? `, give or take ${within},` : ""} ${inSize}.`;
  }
  const { label, least = 1, repeat = { of: 1, plus: 0 }, locked } = rule.count;
  const name = `“${label}”`;
  switch (rule.kind) {
    case "least":
      return `${name} is at least ${least} ${inSize}.`;
    case "repeat":
      return `${name} is a multiple of ${repeat.of}${repeat.plus > 0 ? ` + ${repeat.plus}` : ""} ${inSize}.`;
    case "locked":
      return `${name} is locked at ${locked?.[pattern.sizes[rule.size]?.id ?? ""]} ${inSize}.`;
    case "order":
      return `${name} does not shrink from ${pattern.sizes[rule.size - 1]?.label} to ${pattern.sizes[rule.size]?.label}.`;
  }
}

function timesText(times: number, name: string): string {
  return times === 1 ? name : `${times} × ${name}`;
}

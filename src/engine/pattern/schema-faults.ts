import type { z } from "zod";
import { formatPath, type Fault, type PathPart } from "./faults";

type Issue = z.core.$ZodIssue;

const KINDS: Readonly<Record<string, string>> = {
  array: "a list",
  object: "an object",
  record: "an object",
  string: "text",
  number: "a number",
  boolean: "true or false",
  int: "a whole number",
  tuple: "a list of two numbers",
};

/**
 * Converts schema issues to faults with paths and plain sentences.
 *
 * @param issues issues of a zod 4 parse; a union's issues are those of the branch that fits best.
 * @returns one fault per issue, and one per unknown key.
 */
export function schemaFaults(issues: readonly Issue[], above: readonly PathPart[] = []): Fault[] {
  return issues.flatMap((issue) => issueFaults(issue, above));
}

function issueFaults(issue: Issue, above: readonly PathPart[]): Fault[] {
  const path = [...above, ...issue.path.map((part) => (typeof part === "symbol" ? String(part) : part))];
  switch (issue.code) {
    case "invalid_union":
      return unionFaults(issue.errors, path, issue.message);
    case "unrecognized_keys":
      return issue.keys.map((key) => ({ path: formatPath([...path, key]), says: "is not a key of this document." }));
    case "invalid_key":
      return [{ path: formatPath(path), says: issue.issues[0]?.message ?? issue.message }];
    case "invalid_type":
      return [{ path: formatPath(path), says: typeSentence(issue) }];
    case "invalid_value":
      return [{ path: formatPath(path), says: valueSentence(issue) }];
    default:
      return [{ path: formatPath(path), says: issue.message }];
  }
}

function unionFaults(branches: readonly (readonly Issue[])[], path: readonly PathPart[], message: string): Fault[] {
  const best = message.startsWith("Invalid") ? bestBranch(branches) : undefined;
  return best === undefined ? [{ path: formatPath(path), says: message }] : schemaFaults(best, path);
}

/** The branch that was most likely meant: the right type of value, then the fewest missing or unknown keys. */
function bestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const misfit = (issues: readonly Issue[]) =>
    issues.reduce((sum, issue) => {
      if (issue.code === "invalid_type" && issue.path.length === 0) return sum + 100;
      if (issue.code === "unrecognized_keys") return sum + 3 * issue.keys.length;
      return sum + (issue.path.length === 1 ? 2 : 1);
    }, 0);
  return branches.toSorted((left, right) => misfit(left) - misfit(right))[0];
}

function typeSentence(issue: Extract<Issue, { code: "invalid_type" }>): string {
  const expected = KINDS[issue.expected] ?? issue.expected;
  if (issue.input === undefined && issue.message.endsWith("received undefined")) {
    return `is missing; it should be ${expected}.`;
  }
  return issue.message.startsWith("Invalid input") ? `should be ${expected}.` : issue.message;
}

function valueSentence(issue: Extract<Issue, { code: "invalid_value" }>): string {
  if (!issue.message.startsWith("Invalid")) return issue.message;
  const values = issue.values.map((value) => JSON.stringify(value));
  return values.length === 1 ? `must be ${values.join("")}.` : `must be one of ${values.join(", ")}.`;
}

import { type IntegerProgram, type Sum, mergeSum } from "./integer-program";

const RELATIONS = { "<=": "<=", ">=": ">=", "=": "=" } as const;
/** LP readers limit the length of a line. */
const TERMS_PER_LINE = 8;

/**
 * An integer program as CPLEX LP text. Variables are named x0, x1, …: solvers treat names such as `free` or `inf` as keywords.
 *
 * @throws {RangeError} for a number that is not finite, which solvers do not report.
 */
export function writeLp({ whole, constraints, objective }: IntegerProgram): string {
  const rows = constraints.map(
    ({ sum, relation, right }, index) => ` c${index}: ${sumText(sum)} ${RELATIONS[relation]} ${numberText(right)}`,
  );
  const names = whole.flatMap((isWhole, index) => (isWhole ? [`x${index}`] : []));
  return [
    "Minimize",
    ` obj: ${sumText(objective)}`,
    "Subject To",
    ...rows,
    "Bounds",
    ...whole.map((_, index) => ` 0 <= x${index}`),
    ...(names.length > 0 ? ["General", ...lines(names).map((line) => ` ${line}`)] : []),
    "End",
    "",
  ].join("\n");
}

function sumText(sum: Sum): string {
  // LP readers differ on repeated variables.
  const terms = mergeSum(sum).map(
    ({ variable, weight }) => `${weight < 0 ? "-" : "+"} ${numberText(Math.abs(weight))} x${variable}`,
  );
  return terms.length === 0 ? "0 x0" : lines(terms).join("\n   ");
}

function lines(words: readonly string[]): string[] {
  return Array.from({ length: Math.ceil(words.length / TERMS_PER_LINE) }, (_, line) =>
    words.slice(line * TERMS_PER_LINE, (line + 1) * TERMS_PER_LINE).join(" "),
  );
}

/** The shortest decimal that parses to the same double. */
function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError("a number of an integer program is not finite");
  return String(value);
}

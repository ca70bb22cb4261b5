import type { CauseInput } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import type { Differences, NamedCause } from "@/engine/results";
import type { AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { causeSentence, rivalWords } from "../cause-copy";
import { LEAVE, inputKey } from "./chosen-field";
import { movedWords, tellApartSentence, wayWords, type WayWords } from "./proposal-copy";

/** One way to accept one input; `value` is what the form sends. */
export interface Way extends WayWords {
  readonly by: AcceptedProposal["by"];
  readonly value: string;
}

/** An input that a proposal may change: the cause itself, or one that explains the same equally or nearly as well. */
export interface Alternative {
  readonly input: CauseInput;
  /** A short name, shown where there are several. */
  readonly name: string;
  readonly likeness: "named" | "tied" | "near";
  readonly ways: readonly Way[];
}

/** What the designer may accept or leave. */
export interface Proposal {
  readonly cause: NamedCause;
  readonly sentence: string;
  readonly explains: string;
  readonly moved: string;
  readonly tellApart: string | null;
  readonly alternatives: readonly Alternative[];
  /** The preselected choice, `LEAVE` or a way's value, and why. */
  readonly preselected: string;
  readonly because: string;
}

/** Below this evidence a cause is hardly likelier than chance: e² is seven to one (our own choice). */
const FAINT = 2;

interface Given {
  readonly pattern: PatternDocument;
  readonly differences: Pick<Differences, "causes">;
  readonly unit: LengthUnit;
}

/** Each named cause as a proposal, best first. */
export function proposals({ pattern, differences, unit }: Given): Proposal[] {
  return differences.causes.map((cause) => {
    const tied = cause.rivals.filter((rival) => rival.tied);
    const near = cause.rivals.filter((rival) => !rival.tied);
    const alternatives = [
      alternative(cause, { pattern, unit, likeness: "named" }),
      ...tied.map((rival) => alternative(rival, { pattern, unit, likeness: "tied" })),
      ...near.map((rival) => alternative(rival, { pattern, unit, likeness: "near" })),
    ];
    return {
      cause,
      sentence: causeSentence(cause, pattern, unit),
      explains: `It explains ${Math.round(cause.explains * 100)} % of everything that came out different from the pattern.`,
      moved: movedWords(pattern, { movesCm: cause.movesCm, estimate: cause.estimate, unit }),
      tellApart: tied.length === 0 ? null : tellApartSentence([cause, ...tied], pattern),
      alternatives,
      ...preselection(cause, { pattern, ways: alternatives[0]?.ways ?? [] }),
    };
  });
}

/** The input itself, without the findings about it. */
export function inputOf({ kind, id, direction, size }: CauseInput): CauseInput {
  return { kind, id, ...(direction ? { direction } : {}), ...(size ? { size } : {}) };
}

function alternative(
  given: CauseInput & { readonly estimate?: number; readonly solvable: readonly string[] },
  { pattern, unit, likeness }: { pattern: PatternDocument; unit: LengthUnit; likeness: Alternative["likeness"] },
): Alternative {
  const input = inputOf(given);
  const bys: readonly AcceptedProposal["by"][] =
    input.kind === "count" || given.solvable.length > 0 ? ["input", "published"] : ["published"];
  return {
    input,
    name: rivalWords(input, pattern),
    likeness,
    ways: bys.map((by) => ({
      by,
      value: `${by} ${inputKey(input)}`,
      ...wayWords({ ...input, estimate: given.estimate }, { by, pattern, unit }),
    })),
  };
}

function preselection(
  cause: NamedCause,
  { pattern, ways }: { pattern: PatternDocument; ways: readonly Way[] },
): Pick<Proposal, "preselected" | "because"> {
  const valueOf = (by: AcceptedProposal["by"]) => ways.find((way) => way.by === by)?.value;
  if (cause.evidence < FAINT)
    return {
      preselected: LEAVE,
      because: "We suggest leaving it for now: the evidence is weak and may be chance. More reports will show.",
    };
  const input = valueOf("input");
  if (input === undefined)
    return {
      preselected: valueOf("published") ?? LEAVE,
      because: "No measurement that it affects has a target, so stitches and rows can’t be recalculated.",
    };
  if (cause.kind !== "count")
    return {
      preselected: input,
      because: `We suggest this, because ${listed(pattern.measurements.filter(({ id }) => cause.solvable.includes(id)).map(({ label }) => label))} will then meet your targets.`,
    };
  return {
    preselected: input,
    because:
      cause.breaks === null
        ? "We suggest this, because the number in your grading is the one you planned for this size."
        : `We suggest this, because the number that testers really worked breaks a rule of your pattern: ${cause.breaks}`,
  };
}

/** `A`, `A and B`, `A, B and C`. */
function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

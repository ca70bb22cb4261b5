import type { ApplicantsDocument } from "@/engine/pattern";
import type { Applicant } from "@/engine/places";

/** An answer as numbers that are compared in order, smaller being better; misfit stands third. */
interface Answer {
  readonly sizes: readonly (string | null)[];
  readonly leastFilled: number;
  readonly filled: number;
  readonly misfit: number;
}

/** The best answer, and whether others are as good but for the order of the applicants. */
export interface BestAnswer extends Answer {
  readonly isTied: boolean;
}

const SAME = 1e-9;

/**
 * The best of all answers, each looked at, by the words of docs/method.md#places and none of the engine's code.
 *
 * @returns null where no answer keeps the locks.
 */
export function bestByEnumeration(document: ApplicantsDocument): BestAnswer | null {
  const sizes = document.pattern.sizes.map(({ id }) => id);
  let best: BestAnswer | null = null;
  const visit = (chosen: readonly (string | null)[]) => {
    const next = document.applicants[chosen.length];
    if (next === undefined) {
      const answer = judged(document, chosen);
      if (answer === null) return;
      const isTied = best !== null && isAsGood(answer, best);
      if (best === null || isBetter(answer, best, sizes)) best = { ...answer, isTied };
      else if (isTied) best = { ...best, isTied };
      return;
    }
    for (const size of choices(document, next)) visit([...chosen, size]);
  };
  visit([]);
  return best;
}

function choices(document: ApplicantsDocument, applicant: Applicant): (string | null)[] {
  if (applicant.locked !== undefined) return [applicant.locked];
  if (applicant.excluded) return [null];
  const sizes = document.pattern.sizes.map(({ id }) => id);
  const accepted = sizes.filter((size) => applicant.accepts?.includes(size) ?? true);
  const near = accepted.filter((size) =>
    document.fitBy.every((m) => Math.abs(dOf(document, applicant, size, m)) <= 2 + SAME),
  );
  return [null, ...near];
}

function judged(document: ApplicantsDocument, sizes: readonly (string | null)[]): Answer | null {
  let [leastFilled, filled] = [0, 0];
  for (const { id } of document.pattern.sizes) {
    const load = sizes.filter((size) => size === id).length;
    const places = document.places[id] ?? { least: 0, wanted: 0, most: 0 };
    const locks = document.applicants.filter(({ locked }) => locked === id).length;
    if (locks > (places.most ?? places.wanted) || load > Math.max(places.wanted, locks)) return null;
    leastFilled += Math.min(load, places.least);
    filled += load;
  }
  const misfits = sizes.map((size, index) => {
    const applicant = document.applicants[index];
    return size === null || applicant === undefined ? 0 : misfitOf(document, applicant, size);
  });
  return { sizes, leastFilled, filled, misfit: misfits.reduce((sum, misfit) => sum + misfit, 0) };
}

function isAsGood(one: Answer, other: Answer): boolean {
  const isAlike = one.leastFilled === other.leastFilled && one.filled === other.filled;
  return isAlike && Math.abs(one.misfit - other.misfit) <= SAME;
}

function isBetter(one: Answer, other: Answer, order: readonly string[]): boolean {
  if (one.leastFilled !== other.leastFilled) return one.leastFilled > other.leastFilled;
  if (one.filled !== other.filled) return one.filled > other.filled;
  if (Math.abs(one.misfit - other.misfit) > SAME) return one.misfit < other.misfit;
  const set = one.sizes.findIndex((size, index) => (size === null) !== (other.sizes[index] === null));
  if (set >= 0) return one.sizes[set] !== null;
  const place = one.sizes.findIndex((size, index) => size !== other.sizes[index]);
  return place >= 0 && order.indexOf(one.sizes[place] ?? "") < order.indexOf(other.sizes[place] ?? "");
}

function misfitOf(document: ApplicantsDocument, applicant: Applicant, size: string): number {
  const body = document.fitBy.reduce((sum, m) => sum + dOf(document, applicant, size, m) ** 2, 0);
  const { prefers, record } = applicant;
  const rank = prefers === undefined ? 0 : prefers.includes(size) ? prefers.indexOf(size) : prefers.length;
  const dropping = record === undefined ? 0 : (0.5 * record.dropped) / (record.finished + record.dropped + 2);
  return body + 0.25 * rank + dropping;
}

function dOf({ pattern: { sizes } }: ApplicantsDocument, applicant: Applicant, size: string, m: string): number {
  const position = sizes.findIndex(({ id }) => id === size);
  const cm = (index: number) => sizes[index]?.body[m];
  const own = cm(position) ?? Number.NaN;
  const difference = (applicant.body[m] ?? Number.NaN) - own;
  const neighbour = difference < 0 ? (cm(position - 1) ?? cm(position + 1)) : (cm(position + 1) ?? cm(position - 1));
  const distance = Math.abs((neighbour ?? own) - own);
  return difference / (distance < 1 ? 4 : distance / 2);
}

/** Which two revisions are compared, or why they cannot be. */
export interface RevisionChoice {
  /** Null where there is nothing to compare. */
  readonly from: number | null;
  readonly to: number | null;
  readonly says: string | null;
}

const LONGEST_TOLD = 20;

/**
 * The requested revisions; by default the newest and the one before.
 *
 * @param numbers all numbers there are, the newest first.
 */
export function chooseRevisions(
  numbers: readonly number[],
  asked: { readonly from?: string; readonly to?: string },
): RevisionChoice {
  const [newest] = numbers;
  if (newest === undefined || numbers.length === 1)
    return {
      from: null,
      to: newest ?? null,
      says: "There is only one revision so far, so there is nothing to compare.",
    };
  const known = (text: string | undefined) => numbers.find((number) => String(number) === text) ?? null;
  const to = asked.to ? known(asked.to) : newest;
  const before = numbers.find((number) => to !== null && number < to) ?? newest;
  const from = asked.from ? known(asked.from) : before;
  if (from === null) return { from, to, says: unknownWords(asked.from, newest) };
  if (to === null) return { from, to, says: unknownWords(asked.to, newest) };
  if (from === to) return { from, to, says: `Both are revision ${to}. Choose two different ones.` };
  return { from, to, says: null };
}

function unknownWords(asked = "", newest: number): string {
  const told = asked.length > LONGEST_TOLD ? `${asked.slice(0, LONGEST_TOLD)}…` : asked;
  return `There is no revision “${told}” of this pattern. Choose from 1 to ${newest}.`;
}

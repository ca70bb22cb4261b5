import type { CallDocument, EarlierCall, PatternDocument, Tester } from "../pattern";
import { carriedOver, type CarriedOver } from "./carried-over";
import { replayedCall } from "./replayed-call";

/** A call with the reports of those before it, and what could not be taken over. */
export interface CombinedCall {
  readonly call: CallDocument;
  /** Reports of earlier calls of which nothing can be compared, and why. */
  readonly leftOut: readonly { readonly tester: string; readonly message: string }[];
}

/**
 * One call of all reports that count together: those of `calls` against the pattern of the call itself, with the counts and
 * lengths that their testers worked.
 *
 * What a report leaves out was worked as its own call's pattern says. A reading is taken over where every number that its
 * measurement is made of existed then, yarn where that holds of every stitch of a piece. How the earlier garment fits is not
 * taken over: it says nothing of the garment as it is now.
 *
 * @param call a parsed call document.
 * @returns a call without `calls`, its own testers first; where an id is taken already, `-2`, `-3` … is put behind it.
 * @see docs/method.md#earlier-tests.
 */
export function combinedCall({ calls = [], ...own }: CallDocument): CombinedCall {
  const taken = new Set(own.testers.map(({ id }) => id));
  const testers = [...own.testers];
  const leftOut: { tester: string; message: string }[] = [];
  for (const earlier of calls) {
    const carried = carriedOver(earlier.pattern, own.pattern);
    for (const tester of replayedCall(earlier, own.pattern).testers) {
      const id = freeId(tester.id, taken);
      taken.add(id);
      const over = carriedTester(tester, own.pattern, carried);
      if (over === null) leftOut.push({ tester: id, message: reasonOf(tester, earlier, carried) });
      else testers.push({ ...over, id });
    }
  }
  return { call: { ...own, testers }, leftOut };
}

/** What of a report can be compared with the pattern as it is now; null for nothing. */
function carriedTester(tester: Tester, pattern: PatternDocument, carried: CarriedOver): Tester | null {
  if (!carried.sizes.some(({ id }) => id === tester.size)) return null;
  const among = (items: readonly { readonly id: string }[] = []) => {
    const ids = new Set(items.map(({ id }) => id));
    return (id: string) => ids.has(id);
  };
  const [measured, counted] = [among(carried.measurements), among(pattern.counts)];
  const [spun, ruled, made] = [among(pattern.yarns), among(pattern.lengths), among(pattern.fabrics)];
  const { fit: _fit, prefers: _prefers, ...report } = tester;
  const over = {
    ...report,
    swatches: tester.swatches.filter(({ fabric }) => made(fabric)),
    worked: only(tester.worked, counted),
    workedLengths: only(tester.workedLengths, ruled),
    ...(tester.confirmedCounts ? { confirmedCounts: tester.confirmedCounts.filter(counted) } : {}),
    ...(tester.changed ? { changed: tester.changed.filter(measured) } : {}),
    readings: tester.readings.filter(({ measurement }) => measured(measurement)),
    yarn: carried.yarn ? tester.yarn.filter(({ yarn }) => spun(yarn)) : [],
  };
  return over.swatches.length + over.readings.length + over.yarn.length === 0 ? null : over;
}

const MAX_ID_LENGTH = 40;

function freeId(id: string, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number += 1) {
    const end = number === 1 ? "" : `-${number}`;
    const free = id.slice(0, MAX_ID_LENGTH - end.length) + end;
    if (!taken.has(free)) return free;
  }
}

function only<Value>(
  record: Readonly<Record<string, Value>> | undefined,
  isKnown: (id: string) => boolean,
): Record<string, Value> {
  return Object.fromEntries(Object.entries(record ?? {}).filter(([id]) => isKnown(id)));
}

function reasonOf({ size }: Tester, { pattern }: EarlierCall, { sizes }: CarriedOver): string {
  if (sizes.some(({ id }) => id === size)) return "Nothing that they reported can be compared with the new revision.";
  const label = pattern.sizes.find(({ id }) => id === size)?.label ?? size;
  return `They made size ${label}, which the new revision does not have.`;
}

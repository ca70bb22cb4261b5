import { z } from "zod";

/** What a page marks whenever something on it that follows from typing has changed. */
export const DERIVED_MARK = "derived";
/** Categories of Chrome's trace that `keyTimes` reads. */
export const TRACED = ["devtools.timeline", "blink.user_timing", "benchmark", "cc", "toplevel"];

const dataSchema = z.object({ type: z.string(), timeStamp: z.number(), commitFinishTime: z.number().optional() });
const eventSchema = z.object({
  name: z.string(),
  /** X: a span; I: a moment; b: the beginning of something that lasts. */
  ph: z.string(),
  /** Microseconds, as all times of a trace but those of `args`. */
  ts: z.number(),
  dur: z.number().default(0),
  /** Of the thread's own processor time. */
  tdur: z.number().default(0),
  pid: z.number(),
  tid: z.number(),
  args: z.object({ data: z.unknown().optional() }),
});
const traceSchema = z.object({ traceEvents: z.array(z.unknown()) });
type TraceEvent = z.infer<typeof eventSchema>;

/** One a key, ms. Infinite where it did not come before the next digit was handled. */
export interface KeyTimes {
  /** To the commit of the first frame that was made after the page had handled the digit. */
  readonly cellMs: readonly number[];
  /** The page's main thread's own processor time until then, which other work on the machine does not lengthen. */
  readonly busyMs: readonly number[];
  /** To the commit of the frame with the last change that follows from the digit. */
  readonly derivedMs: readonly number[];
}

/**
 * Times of the keys in a browser's trace. A key begins when the browser receives it, so that waiting for a busy page
 * counts; it ends with the commit, for what the compositor then does is the same for every page.
 *
 * @param trace Chrome's trace format.
 */
export function keyTimes(trace: string): KeyTimes {
  const events = traceSchema.parse(JSON.parse(trace)).traceEvents.flatMap((event) => {
    const read = eventSchema.safeParse(event);
    return read.success ? [read.data] : [];
  });
  const timings = events.filter(({ name, ph }) => name === "EventTiming" && ph === "b").flatMap(timingOf);
  const ofType = (wanted: string) =>
    timings.filter(({ type }) => type === wanted).toSorted((left, right) => left.ts - right.ts);
  // Every key is a digit, so the two lists go together; by time they would not, where a key waits for the one before.
  const [keys, inputs] = [ofType("keydown"), ofType("input")];
  const onPage = events.filter(({ pid, tid }) => pid === keys[0]?.pid && tid === keys[0].tid);
  const times = keys.map((key, index) => {
    const input = inputs[index];
    const cell = (input?.commitFinishTime ?? Number.POSITIVE_INFINITY) - key.timeStamp;
    const [from, to] = [input?.ts ?? Number.POSITIVE_INFINITY, inputs[index + 1]?.ts ?? Number.POSITIVE_INFINITY];
    const busy = onPage
      .filter(({ name, ts }) => name.endsWith("RunTask") && ts >= key.ts && ts <= key.ts + 1000 * cell)
      .reduce((sum, { tdur }) => sum + tdur, 0);
    const mark = onPage.findLast((event) => event.name === DERIVED_MARK && event.ts >= from && event.ts < to);
    const derived = mark && onPage.find(({ name, ts }) => name === COMMIT && ts >= mark.ts);
    const derivedMs = derived === undefined ? Number.POSITIVE_INFINITY : (derived.ts + derived.dur - key.ts) / 1000;
    return { cellMs: cell, busyMs: busy / 1000, derivedMs };
  });
  return {
    cellMs: times.map(({ cellMs }) => cellMs),
    busyMs: times.map(({ busyMs }) => busyMs),
    derivedMs: times.map(({ derivedMs }) => derivedMs),
  };
}

const COMMIT = "ProxyMain::BeginMainFrame::commit";

function timingOf({ ts, pid, tid, args }: TraceEvent) {
  const data = dataSchema.safeParse(args.data);
  return data.success ? [{ ts, pid, tid, ...data.data }] : [];
}

import { z } from "zod";

/** What a page marks whenever something on it that follows from typing has changed. */
export const DERIVED_MARK = "derived";

const eventSchema = z.object({
  name: z.string(),
  cat: z.string(),
  /** X: a span; R or I: a moment. */
  ph: z.string(),
  /** Microseconds. */
  ts: z.number(),
  dur: z.number().optional(),
  pid: z.number(),
  tid: z.number(),
  args: z.object({ data: z.object({ type: z.string().optional() }).loose().optional() }).loose(),
});
const traceSchema = z.object({ traceEvents: z.array(z.unknown()) });

interface Span {
  readonly start: number;
  readonly end: number;
}

export interface KeyTimes {
  /** From the key to the frame with its digit, committed by the page's main thread; ms, one a key. */
  readonly cellMs: readonly number[];
  /** From the key to the frame with all that follows from the digit, committed; infinite where nothing came before the next key. */
  readonly derivedMs: readonly number[];
}

/**
 * Times of the keys in a browser's trace.
 *
 * A key begins when the browser receives it, so that waiting for a busy page counts. Its digit is in the frame that is
 * committed to the compositor first after the page has handled the input; what is left then is the same for every page.
 *
 * @param trace Chrome's trace format, of the categories in `TRACED`.
 */
export function keyTimes(trace: string): KeyTimes {
  const events = traceSchema.parse(JSON.parse(trace)).traceEvents.flatMap((event) => {
    const read = eventSchema.safeParse(event);
    return read.success ? [read.data] : [];
  });
  const typed = (type: string) => events.filter(({ args }) => args.data?.type === type);
  const keys = typed("keydown").filter(({ name, ph }) => name === "EventTiming" && ph === "b");
  const inputs = typed("input")
    .filter(({ name }) => name === "EventDispatch")
    .map(spanOf);
  const page = typed("input").find(({ name }) => name === "EventDispatch");
  const commits = events
    .filter(({ name, pid, tid }) => name === "Commit" && pid === page?.pid && tid === page.tid)
    .map(spanOf);
  const marks = events.filter(({ name, cat }) => name === DERIVED_MARK && cat.includes("user_timing")).map(spanOf);
  const moments = keys.map(({ ts }) => ts).toSorted((left, right) => left - right);
  const times = moments.map((start, at) => {
    const next = moments[at + 1] ?? Number.POSITIVE_INFINITY;
    const committed = (span: Span | undefined) => {
      const commit = span && commits.find((each) => each.start >= span.end);
      return commit === undefined ? Number.POSITIVE_INFINITY : (commit.end - start) / 1000;
    };
    const isOfKey = (span: Span) => span.start >= start && span.start < next;
    return { cell: committed(inputs.find(isOfKey)), derived: committed(marks.findLast(isOfKey)) };
  });
  return { cellMs: times.map(({ cell }) => cell), derivedMs: times.map(({ derived }) => derived) };
}

export const TRACED = ["devtools.timeline", "blink.user_timing", "benchmark", "cc"];

function spanOf({ ts, dur = 0 }: { readonly ts: number; readonly dur?: number | undefined }): Span {
  return { start: ts, end: ts + dur };
}

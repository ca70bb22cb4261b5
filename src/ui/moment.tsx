import { momentWords, type MomentKind } from "./moment-copy";
import { ReadersMoment } from "./readers-moment";

interface MomentProps extends MomentKind {
  readonly at: Date;
  /** The reader's own zone, if known; else their browser supplies it. */
  readonly readerZone?: string;
}

/** A moment in the zone that it was named in and, where they differ, in the reader's own. */
export function Moment({ at, readerZone, ...kind }: MomentProps) {
  return (
    <>
      <time dateTime={at.toISOString()}>{momentWords(at, kind)}</time>
      <ReadersMoment at={at.toISOString()} knownZone={readerZone ?? null} {...kind} />
    </>
  );
}

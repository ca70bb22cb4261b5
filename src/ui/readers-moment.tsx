"use client";

import { momentWords, type MomentKind } from "./moment-copy";
import { useBrowserZone } from "./use-browser-zone";

interface ReadersMomentProps extends MomentKind {
  /** ISO 8601, in UTC. */
  readonly at: string;
  readonly knownZone: string | null;
}

/** A moment where the reader is; nothing while that is not known, and where it is the same as in its own zone. */
export function ReadersMoment({ at, timeZone, edge, knownZone }: ReadersMomentProps) {
  const browserZone = useBrowserZone();
  const zone = knownZone ?? browserZone;
  if (zone === null) return null;
  const moment = new Date(at);
  const words = momentWords(moment, { timeZone: zone, edge });
  if (words === momentWords(moment, { timeZone, edge })) return null;
  return <span className="block text-sm text-soft">where you are: {words}</span>;
}

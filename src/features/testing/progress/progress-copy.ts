import { callPageHref } from "@/features/calls/call-pages";
import { formatChange } from "@/ui/format-length";
import { dayIn, dueWords } from "../home/due-copy";
import { NEED_ACTIONS } from "./action-of-need";
import type { Need } from "./progress-query";
import { isAtWork, lastHeard, type Progress, type ProgressState } from "./tester-status-data";

/** Their stage in words. */
export function stageWords({ row, state }: Progress): string {
  return row.freedAt === null ? STATE_WORDS[state] : "spot opened for somebody else";
}

const STATE_WORDS: Readonly<Record<ProgressState, string>> = {
  invited: "invited, no answer yet",
  accepted: "accepted",
  "swatch in": "swatch made",
  "swatch sent": "swatch sent",
  making: "making",
  "reported in part": "partly reported",
  reported: "reported",
  stopped: "stopped",
  declined: "declined",
  withdrawn: "withdrawn",
  lapsed: "did not answer in time",
};

/** Names of the filters by what needs attention. */
export const NEED_FILTER_WORDS: Readonly<Record<Need, string>> = {
  stuck: "Stuck",
  stopped: "Stopped",
  freed: "Spot opened",
  late: "Late",
  lapsed: "Did not answer",
  declined: "Declined",
  "off gauge": "Off gauge",
  answer: "Answered you",
  silent: "No news",
  behind: "Behind",
};

/** What needs the designer's attention about a tester, in words. */
export function needWords(need: Need, progress: Progress, unit: "cm" | "in"): string {
  const { row, silentDays, offGauge } = progress;
  switch (need) {
    case "stuck":
      return row.milestone?.note ? `stuck: “${row.milestone.note}”` : "stuck";
    case "stopped":
    case "freed":
    case "lapsed":
    case "declined":
      return "a spot in their size is open";
    case "late":
      return "late";
    case "off gauge":
      return offGauge === null ? "" : `off gauge: ${offGauge.label} ${formatChange(offGauge.cm, unit)}`;
    case "answer":
      return "answered your question about a number";
    case "silent":
      return `no news for ${silentDays} days`;
    case "behind":
      return row.milestone?.note ? `behind: “${row.milestone.note}”` : "behind";
  }
}

/** The day of the last sign of a tester. */
export function heardWords({ row, timeZone }: Progress): string {
  const at = row.stoppedAt ?? row.declinedAt ?? lastHeard(row);
  return at === null ? "" : dayIn(at, timeZone);
}

/** When the next thing is due from a tester: their answer, or their report. */
export function nextDueWords({ row, timeZone, state }: Progress, now: Date): string {
  const at = state === "invited" ? row.expiresAt : isAtWork(state) ? (row.dates?.reportBy.at ?? null) : null;
  return at === null ? "" : dueWords(at, { zone: timeZone, now }).from;
}

/** What the designer can do about a tester, and the page for it; null where there is nothing to do. */
export function actionOf({ row, needs }: Progress, callId: string): Action | null {
  const [first] = needs;
  if (first === undefined) return null;
  const { page, link } = NEED_ACTIONS[first];
  const href = callPageHref(callId, page);
  return { label: link, href: page === "progress" ? `${href}/${row.testerId}` : href };
}

interface Action {
  readonly label: string;
  readonly href: string;
}

/** The date that belongs to the tester's state. */
export function sinceWords({ row, timeZone, state }: Progress, now: Date): string {
  const at = {
    invited: row.expiresAt,
    lapsed: row.expiresAt,
    accepted: row.acceptedAt,
    "swatch in": row.draft?.updatedAt ?? null,
    "swatch sent": row.report?.sentAt ?? null,
    making: row.draft?.updatedAt ?? null,
    "reported in part": row.report?.sentAt ?? null,
    reported: row.report?.sentAt ?? null,
    stopped: row.stoppedAt,
    declined: row.declinedAt,
    withdrawn: row.withdrawnAt,
  }[state];
  if (at === null) return "";
  if (state === "invited") return `(can answer until ${dueWords(at, { zone: timeZone, now }).day})`;
  return state === "lapsed" ? dueWords(at, { zone: timeZone, now }).day : dayIn(at, timeZone);
}

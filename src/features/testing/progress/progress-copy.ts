import { formatChange } from "@/ui/format-length";
import { dayIn } from "../home/due-copy";
import type { Need } from "./progress-query";
import type { Progress, ProgressState } from "./tester-status-data";

export const STATE_WORDS: Readonly<Record<ProgressState, string>> = {
  invited: "invited, no answer yet",
  accepted: "accepted",
  "swatch in": "swatch done",
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
  late: "Late",
  lapsed: "Did not answer",
  "off gauge": "Off gauge",
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
      return "stopped: their spot can be filled";
    case "late":
      return "late";
    case "lapsed":
      return "their spot can go to somebody else";
    case "off gauge":
      return offGauge === null ? "" : `works off gauge: ${offGauge.label} ${formatChange(offGauge.cm, unit)}`;
    case "silent":
      return `no news for ${silentDays} days`;
    case "behind":
      return row.milestone?.note ? `behind: “${row.milestone.note}”` : "behind";
  }
}

/** The date that belongs to the tester's state. */
export function sinceWords({ row, state }: Progress): string {
  const at = {
    invited: row.expiresAt,
    lapsed: row.expiresAt,
    accepted: row.acceptedAt,
    "swatch in": row.draft?.updatedAt ?? null,
    making: row.draft?.updatedAt ?? null,
    "reported in part": row.report?.sentAt ?? null,
    reported: row.report?.sentAt ?? null,
    stopped: row.stoppedAt,
    declined: row.declinedAt,
    withdrawn: row.withdrawnAt,
  }[state];
  if (at === null) return "";
  return state === "invited" ? `(can answer until ${dayIn(at, "UTC")})` : dayIn(at, "UTC");
}

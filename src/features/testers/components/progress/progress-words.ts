import { formatChange } from "@/ui/format-length";
import { dayIn } from "../../due-words";
import type { Need } from "../../progress-query";
import type { Progress, ProgressState } from "../../tester-status-data";

export const STATE_WORDS: Readonly<Record<ProgressState, string>> = {
  invited: "invited, not answered",
  accepted: "accepted",
  "swatch in": "swatch in",
  making: "making",
  "reported in part": "reported in part",
  reported: "reported",
  stopped: "stopped",
  declined: "declined",
  withdrawn: "withdrawn",
  lapsed: "did not answer in time",
};

/** Of whom a list is asked for by what needs the designer. */
export const NEED_FILTER_WORDS: Readonly<Record<Need, string>> = {
  stuck: "Stuck",
  stopped: "Stopped",
  late: "Late",
  lapsed: "Did not answer",
  "off gauge": "Off gauge",
  silent: "Silent",
  behind: "Behind",
};

/** What needs the designer about a tester, in words. @param zone the call's days are told in. */
export function needWords(need: Need, progress: Progress, unit: "cm" | "in"): string {
  const { row, silentDays, offGauge } = progress;
  switch (need) {
    case "stuck":
      return row.milestone?.note ? `stuck: “${row.milestone.note}”` : "stuck";
    case "stopped":
      return "stopped: her place can be filled";
    case "late":
      return "late";
    case "lapsed":
      return "her place can be given on";
    case "off gauge":
      return offGauge === null ? "" : `off gauge, going on: ${offGauge.label} ${formatChange(offGauge.cm, unit)}`;
    case "silent":
      return `silent for ${silentDays} days`;
    case "behind":
      return row.milestone?.note ? `behind: “${row.milestone.note}”` : "behind";
  }
}

/** The day that goes with where she is. */
export function sinceWords({ row, state }: Progress): string {
  const at = {
    invited: row.endsAt,
    lapsed: row.endsAt,
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
  return state === "invited" ? `until ${dayIn(at, "UTC")}` : dayIn(at, "UTC");
}

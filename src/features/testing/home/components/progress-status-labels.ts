import type { ProgressStatus } from "../data";

/** A tester's progress status as others read it. */
export const PROGRESS_STATUS_LABELS: Readonly<Record<ProgressStatus, string>> = {
  track: "on track",
  behind: "behind",
  stuck: "stuck",
  stop: "had to stop",
};

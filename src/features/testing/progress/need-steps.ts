import type { NextStep } from "@/features/calls/call-pages";
import type { ProgressList } from "./progress-list-data";
import type { Need } from "./progress-query";
import { SILENT_DAYS } from "./tester-status-data";

/** What a designer has to do about testers at work, the most urgent first; each leads to those whom it concerns. */
export function needSteps(needs: ProgressList["needs"]): NextStep[] {
  return STEPS.flatMap(({ need, one, many, ...step }) => {
    const count = needs[need] ?? 0;
    if (count === 0) return [];
    const message = count === 1 ? `1 tester ${one}` : `${count} testers ${many}`;
    return [
      { ...step, message, ...(step.page === "progress" ? { search: `?needs=${encodeURIComponent(need)}` } : {}) },
    ];
  });
}

const STEPS: readonly (Pick<NextStep, "page" | "link"> & {
  readonly need: Need;
  readonly one: string;
  readonly many: string;
})[] = [
  { need: "stuck", one: "is stuck.", many: "are stuck.", page: "progress", link: "See where" },
  { need: "stopped", one: "had to stop.", many: "had to stop.", page: "sizes", link: "Find a tester" },
  { need: "late", one: "is late.", many: "are late.", page: "progress", link: "See who is late" },
  {
    need: "off gauge",
    one: "is off gauge and has not started the garment.",
    many: "are off gauge and have not started the garment.",
    page: "progress",
    link: "See who is off gauge",
  },
  {
    need: "answer",
    one: "answered your question about a number.",
    many: "answered your questions about numbers.",
    page: "progress",
    link: "Read what they say",
  },
  {
    need: "silent",
    one: `has sent no news for ${SILENT_DAYS} days or more.`,
    many: `have sent no news for ${SILENT_DAYS} days or more.`,
    page: "progress",
    link: "See who",
  },
];

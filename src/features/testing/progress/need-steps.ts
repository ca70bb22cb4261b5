import type { NextStep } from "@/features/calls/call-pages";
import { NEED_ACTIONS } from "./action-of-need";
import type { ProgressList } from "./progress-list-data";
import type { Need } from "./progress-query";
import { SILENT_DAYS } from "./tester-status-data";

/** What a designer has to do about testers, the most urgent first; each leads to those whom it concerns. */
export function needSteps(needs: ProgressList["needs"]): NextStep[] {
  return STEPS.flatMap(({ need, one, many }) => {
    const count = needs[need] ?? 0;
    if (count === 0) return [];
    const { page, listLink: link } = NEED_ACTIONS[need];
    const message = count === 1 ? `1 tester ${one}` : `${count} testers ${many}`;
    return [{ page, link, message, ...(page === "progress" ? { search: `?needs=${encodeURIComponent(need)}` } : {}) }];
  });
}

/** Invitations that ended stand with what a call waits for (`nextSteps`); who is behind has told it, and goes on. */
const STEPS: readonly { readonly need: Need; readonly one: string; readonly many: string }[] = [
  { need: "stuck", one: "is stuck.", many: "are stuck." },
  { need: "stopped", one: "has stopped.", many: "have stopped." },
  {
    need: "freed",
    one: "has not been in touch, and the spot you opened is still free.",
    many: "have not been in touch, and the spots you opened are still free.",
  },
  { need: "late", one: "is late.", many: "are late." },
  {
    need: "declined",
    one: "declined, and a spot in their size is open.",
    many: "declined, and spots in their sizes are open.",
  },
  {
    need: "off gauge",
    one: "is off gauge and has not started the garment.",
    many: "are off gauge and have not started the garment.",
  },
  {
    need: "answer",
    one: "answered your question about a number.",
    many: "answered your questions about numbers.",
  },
  {
    need: "silent",
    one: `has sent no news for ${SILENT_DAYS} days or more.`,
    many: `have sent no news for ${SILENT_DAYS} days or more.`,
  },
];

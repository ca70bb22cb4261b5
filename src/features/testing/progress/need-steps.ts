import type { NextStep } from "@/features/calls/call-pages";
import { NEED_ACTIONS } from "./action-of-need";
import type { Need } from "./progress-query";
import { SILENT_DAYS } from "./tester-status-data";

/** How many testers need the same of a designer. */
export interface NeedsTogether {
  readonly needs: readonly Need[];
  readonly many: number;
}

/**
 * What a designer has to do about testers, the most urgent first; each leads to those whom it concerns. Everybody is
 * counted once, where they need it most; what else they need is said beside it.
 */
export function needSteps(together: readonly NeedsTogether[]): NextStep[] {
  return STEPS.flatMap((step) => {
    const group = together.filter(({ needs }) => STEPS.find(({ need }) => needs.includes(need)) === step);
    const count = sumOf(group);
    if (count === 0) return [];
    const { page, listLink: link } = NEED_ACTIONS[step.need];
    const isMore = together.some((each) => each.needs.includes(step.need) && !group.includes(each));
    const testers = `${count} ${isMore ? "more " : ""}${count === 1 ? "tester" : "testers"}`;
    const message = `${testers} ${count === 1 ? step.one : step.many}${alsoWords(group, step)}.`;
    const search = page === "progress" ? { search: `?needs=${encodeURIComponent(step.need)}` } : {};
    return [{ page, link, message, ...search }];
  });
}

/** `; 1 of them is also late`, of people who need several things. */
function alsoWords(group: readonly NeedsTogether[], first: NeedStep): string {
  const count = sumOf(group);
  const also = STEPS.flatMap(({ need, also }) => {
    const many = sumOf(group.filter(({ needs }) => needs.includes(need)));
    if (need === first.need || many === 0 || also === undefined) return [];
    if (count === 1) return [also.many];
    return [
      `${many === count ? (count === 2 ? "both" : "all of them") : `${many} of them`} ${many === 1 ? also.one : also.many}`,
    ];
  });
  if (also.length === 0) return "";
  return count === 1 ? `; they ${also.join(" and ")}` : `; ${also.join(", ")}`;
}

function sumOf(group: readonly NeedsTogether[]): number {
  return group.reduce((sum, { many }) => sum + many, 0);
}

interface NeedStep {
  readonly need: Need;
  readonly one: string;
  readonly many: string;
  /** The same of people who need something else more; left out where nobody does. */
  readonly also?: { readonly one: string; readonly many: string };
}

/** Invitations that ended stand with what a call waits for (`nextSteps`); who is behind has told it, and goes on. */
const STEPS: readonly NeedStep[] = [
  { need: "stuck", one: "is stuck", many: "are stuck" },
  { need: "stopped", one: "has stopped", many: "have stopped" },
  {
    need: "freed",
    one: "has not been in touch, and the spot you opened is still free",
    many: "have not been in touch, and the spots you opened are still free",
  },
  { need: "late", one: "is late", many: "are late", also: { one: "is also late", many: "are also late" } },
  {
    need: "declined",
    one: "declined, and a spot in their size is open",
    many: "declined, and spots in their sizes are open",
  },
  {
    need: "off gauge",
    one: "is off gauge and has not started the garment",
    many: "are off gauge and have not started the garment",
    also: {
      one: "is also off gauge before starting the garment",
      many: "are also off gauge before starting the garment",
    },
  },
  {
    need: "answer",
    one: "answered your question about a number",
    many: "answered your questions about numbers",
    also: { one: "also answered your question about a number", many: "also answered your question about a number" },
  },
  {
    need: "silent",
    one: `has sent no news for ${SILENT_DAYS} days or more`,
    many: `have sent no news for ${SILENT_DAYS} days or more`,
    also: {
      one: `has also sent no news for ${SILENT_DAYS} days or more`,
      many: `have also sent no news for ${SILENT_DAYS} days or more`,
    },
  },
];

import { nextStepHref } from "@/features/calls/call-pages";
import type { MessageWords } from "@/features/mail/schema";
import type { WaitingCall } from "../call-steps-data";

/** What needs a designer in their tests, each with the way to where it is done. */
export function summaryContent(waiting: readonly WaitingCall[]): MessageWords {
  const [only, ...others] = waiting;
  return {
    subject:
      only !== undefined && others.length === 0
        ? `What needs you in “${only.title}”`
        : `What needs you in ${waiting.length} tests`,
    parts: waiting.flatMap(({ callId, title, steps }) => [
      ...(waiting.length === 1 ? [] : [{ text: `“${title}”` }]),
      ...steps.flatMap((step) => [
        { text: step.withoutNames ?? step.message },
        { link: step.link, to: { path: nextStepHref(callId, step) } },
      ]),
    ]),
  };
}

import type { LoadedTester } from "./loaders";
import type { StepPage, TesterStep } from "./tester-steps";

/** The next thing for a tester to do. */
export interface NextThing {
  readonly title: string;
  readonly message: string;
  /** The page where it is done; null if there is nothing to do. */
  readonly page: StepPage | "swatch/send" | null;
  readonly button: string;
  /** The deadline. */
  readonly by: Date | null;
}

/** The first of the steps that are left; steps that need fixing come before new ones. */
export function nextThing({ tester, steps, inHand }: Pick<LoadedTester, "tester" | "steps" | "inHand">): NextThing {
  if (tester.stoppedByDesigner)
    return rest("Your test has ended", "The designer ended it. What you sent stays; there is nothing more to do.");
  const goOn = tester.call.status === "open" ? GO_ON : "";
  if (tester.freedAt !== null)
    return rest(
      "Your spot is open for somebody else",
      `You had not been in touch for a while. That is all right: things come up. What you sent stays with the designer and counts.${goOn}`,
    );
  if (tester.stoppedAt !== null) return rest("You have stopped", `What you sent stays with the designer.${goOn}`);
  if (tester.call.status === "closed")
    return rest(
      "This test is closed",
      "Thank you. Nothing more can be sent; what you sent stays, and you can still read it.",
    );
  const left = steps.filter(({ page, state }) => state !== null && state !== "complete" && page !== "report");
  const next = left.find(({ state }) => state === "faulty") ?? left[0];
  const isSent = inHand.sent !== null;
  if (next === undefined || (isSent && next.state === "empty"))
    return sending(steps, { isSent, by: tester.dates?.reportBy.at ?? null });
  if (!isSent && isSwatchAlone(steps)) return { ...SEND_SWATCH, by: tester.dates?.swatchBy.at ?? null };
  return {
    ...thing(next),
    by: (next.page === "swatch" ? tester.dates?.swatchBy.at : tester.dates?.reportBy.at) ?? null,
  };
}

const GO_ON = " You can continue until somebody else has your spot; what you typed is still here.";

const SEND_SWATCH = {
  title: "Send your swatch",
  message: "The designer sees what your gauge would do to your size before you make the garment.",
  page: "swatch/send",
  button: "Review your swatch",
} as const;

/** The swatch is complete, and nothing else is begun. */
function isSwatchAlone(steps: readonly TesterStep[]): boolean {
  const filled = steps.filter(({ page, state }) => state !== null && page !== "report" && state !== "empty");
  return filled.length === 1 && filled[0]?.page === "swatch" && filled[0].state === "complete";
}

function sending(steps: readonly TesterStep[], { isSent, by }: { isSent: boolean; by: Date | null }): NextThing {
  const isChanged = steps.some(({ page, state }) => page === "report" && state !== "complete");
  if (isSent && !isChanged)
    return rest("Your report is sent", "Thank you. You can add to it or change it as long as the test is open.");
  return {
    title: isSent ? "Send your changes" : "Send your report",
    message: isSent
      ? "The designer sees your changes once you send them."
      : "Everything is filled in. Review it, then send it.",
    page: "report",
    button: "Review and send",
    by: isSent ? null : by,
  };
}

function rest(title: string, message: string): NextThing {
  return { title, message, page: null, button: "", by: null };
}

function thing(step: TesterStep): Omit<NextThing, "by"> {
  const { page, state, message, label } = step;
  if (state === "faulty") return { title: `Fix something: ${label}`, message: `${message}.`, page, button: "Fix it" };
  const isStarted = state === "begun";
  const soFar = isStarted ? ` So far: ${message}.` : "";
  switch (page) {
    case "swatch":
      return {
        title: isStarted ? "Continue your swatch" : "Make your swatch",
        message: `Enter its numbers, and see at once what your gauge means for your size.${soFar}`,
        page,
        button: "Go to swatch",
      };
    case "counts":
      return isStarted
        ? { title: "Enter your counts", message: `So far: ${message}.`, page, button: "Go to counts" }
        : {
            title: "Make your garment",
            message: "Follow the pattern, with the numbers of your size marked. Then enter the counts you worked.",
            page: "pattern",
            button: "Open the pattern",
          };
    case "measurements":
      return {
        title: isStarted ? "Continue measuring" : "Measure your garment",
        message: `All in one list; a schematic shows where the tape goes.${soFar}`,
        page,
        button: "Go to measurements",
      };
    case "yarn":
      return {
        title: "Enter the yarn you used",
        message: `By weight or by balls.${soFar}`,
        page,
        button: "Go to yarn",
      };
    case "fit":
      return {
        title: "Say how it fits",
        message: `Place by place, in your own words.${soFar}`,
        page,
        button: "Go to fit",
      };
    case "pattern":
    case "photos":
    case "report":
      return { title: label, message, page, button: label };
  }
}

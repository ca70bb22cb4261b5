import type { LoadedTester } from "./loaders";
import type { StepPage, TesterStep } from "./tester-steps";

/** The one thing that a tester does next. */
export interface NextThing {
  readonly title: string;
  readonly says: string;
  /** The page where it is done; null where there is nothing to do. */
  readonly page: StepPage | null;
  readonly button: string;
  /** By when it is to be done. */
  readonly by: Date | null;
}

/** What comes first of all that is left; what is to mend comes before what is new. */
export function nextThing({ tester, steps, inHand }: Pick<LoadedTester, "tester" | "steps" | "inHand">): NextThing {
  if (tester.stoppedAt !== null)
    return rest("You have stopped", "What you sent stays with the designer. You owe nothing more.");
  if (tester.call.status === "closed")
    return rest(
      "This call is closed",
      "Thank you. Nothing more can be sent; what you sent stays, and you can still read it.",
    );
  const left = steps.filter(({ page, state }) => state !== "complete" && page !== "pattern" && page !== "report");
  const next = left.find(({ state }) => state === "faulty") ?? left[0];
  const isSent = inHand.sent !== null;
  if (next === undefined || (isSent && next.state === "empty"))
    return sending(steps, { isSent, by: tester.dates?.reportBy.at ?? null });
  return {
    ...thing(next),
    by: (next.page === "swatch" ? tester.dates?.swatchBy.at : tester.dates?.reportBy.at) ?? null,
  };
}

function sending(steps: readonly TesterStep[], { isSent, by }: { isSent: boolean; by: Date | null }): NextThing {
  const isChanged = steps.some(({ page, state }) => page === "report" && state !== "complete");
  if (isSent && !isChanged)
    return rest("Your report is sent", "Thank you. You can add to it or mend it as long as the call is open.");
  return {
    title: isSent ? "Send what you changed" : "Send your report",
    says: isSent
      ? "The designer sees your changes once you send them."
      : "All is filled in: look through it, then send it.",
    page: "report",
    button: "Look through and send",
    by: isSent ? null : by,
  };
}

function rest(title: string, says: string): NextThing {
  return { title, says, page: null, button: "", by: null };
}

function thing(step: TesterStep): Omit<NextThing, "by"> {
  const { page, state, says, label } = step;
  if (state === "faulty") return { title: `Mend something: ${label}`, says: `${says}.`, page, button: "Mend it" };
  const isBegun = state === "begun";
  const soFar = isBegun ? ` So far: ${says}.` : "";
  switch (page) {
    case "swatch":
      return {
        title: isBegun ? "Go on with your swatch" : "Make your swatch",
        says: `You type its numbers, and see at once what your gauge would make of your size.${soFar}`,
        page,
        button: "To the swatch",
      };
    case "counts":
      return isBegun
        ? { title: "Tell what you worked", says: `So far: ${says}.`, page, button: "To the counts" }
        : {
            title: "Work your garment",
            says: "The pattern, with the numbers of your size marked. Then tell the counts as you worked them.",
            page: "pattern",
            button: "To the pattern",
          };
    case "measurements":
      return {
        title: isBegun ? "Go on measuring" : "Measure your garment",
        says: `One measurement after the other; a drawing shows where the tape goes.${soFar}`,
        page,
        button: "To the measurements",
      };
    case "yarn":
      return {
        title: "Tell what yarn you used",
        says: `By weighing, or by balls.${soFar}`,
        page,
        button: "To the yarn",
      };
    case "fit":
      return {
        title: "Tell how it fits",
        says: `Place by place, in your own words.${soFar}`,
        page,
        button: "To the fit",
      };
    case "pattern":
    case "report":
      return { title: label, says, page, button: label };
  }
}

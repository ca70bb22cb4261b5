import type { NextQuestion } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { measurementName } from "../carrier-copy";
import { inputName, tenths } from "../cause-copy";

interface Told {
  readonly pattern: PatternDocument;
  /** By ids of testers. */
  readonly names: ReadonlyMap<string, string>;
}

/** What to ask, of whom. */
export function nextQuestionSentence(question: NextQuestion, { pattern, names }: Told): string {
  const { action, tester = "", measurement, size, input } = question;
  const name = names.get(tester) ?? tester;
  const what = measurementName(pattern, measurement) ?? "";
  switch (action) {
    case "measure-again":
      return `Ask ${name} to measure ${what} again.`;
    case "measure":
      return `Ask ${name} for ${what}, which their report leaves out.`;
    case "tester":
      return `Find one more tester for size ${pattern.sizes.find(({ id }) => id === size)?.label ?? ""}.`;
    case "input":
      return input === undefined ? "" : `Measure ${inputName(input, pattern)} itself.`;
  }
}

/** What a question settles, as far as can be foreseen. */
export function settlesWords({ settles }: Pick<NextQuestion, "settles">): string {
  if (settles < MIN_TOLD) return "It would hardly settle anything by itself.";
  const [count, one] = [tenths(settles), settles >= 0.95 && settles < 1.05];
  return `It would settle about ${count} ${one ? "verdict" : "verdicts"}.`;
}

/** Less is not told as a number. */
const MIN_TOLD = 0.05;

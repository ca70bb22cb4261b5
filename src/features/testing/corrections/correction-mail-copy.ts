import type { PatternDocument } from "@/engine/pattern";
import type { NumberChange } from "@/features/calls/correction-schema";
import type { MessageWords } from "@/features/mail/schema";
import type { Facts, MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";

interface Published {
  readonly text: string;
  readonly numbers: readonly NumberChange[];
  /** The counts of the revision that it corrects. */
  readonly counts: PatternDocument["counts"];
}

/** A correction concerns their size: what it says, and which numbers of theirs it changes. */
export function correctionContent(
  { pattern, size, sizeId, ownLink }: MailedTester,
  { text, numbers, counts }: Published,
): MessageWords {
  const own = numbers.filter((number) => number.size === sizeId);
  const facts: Facts = own.map(({ count, was, becomes }) => [
    counts.find(({ id }) => id === count)?.label ?? count,
    `${becomes} instead of ${was}`,
  ]);
  return {
    subject: `A correction to “${pattern}”`,
    parts: [
      { text: `There is a mistake in “${pattern}”, and it concerns your size ${size}.` },
      { text: "The correction:" },
      { quote: text },
      ...(facts.length === 0 ? [] : [{ facts }]),
      { text: "Your page shows where it belongs." },
      { link: "Open your test", to: ownLink },
    ],
  };
}

import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { writeToTesters } from "@/features/recruiting/invitations/tester-mail-mutations";
import type { Connection } from "@/server/transaction";

interface PublishedCorrection {
  /** Ids; none stands for all sizes. */
  readonly sizes: readonly string[];
  readonly text: string;
}

/** Tells the testers of its sizes of a correction, those who have finished too: it is not asked of them to do anything. */
export async function writeCorrection(
  connection: Connection,
  access: CallAccess,
  { sizes, text }: PublishedCorrection,
): Promise<void> {
  await writeToTesters(connection, {
    kind: "correction-published",
    testers: {
      ...{ call: callEditScope(access), acceptedAt: { not: null }, stoppedAt: null },
      ...(sizes.length === 0 ? {} : { size: { in: [...sizes] } }),
    },
    content: ({ pattern, size, ownLink }) => ({
      subject: `A correction to “${pattern}”`,
      parts: [
        { text: `There is a mistake in “${pattern}”, and it concerns your size ${size}. The correction:` },
        { quote: text },
        { text: "Your page shows where it belongs." },
        { link: "Open your test", to: ownLink },
      ],
    }),
  });
}

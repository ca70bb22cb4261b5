import "server-only";
import { writeToDesigner } from "@/features/calls/designer-mail-mutations";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";

/** Tells the designer that an offered place was declined. @param tester by the proof of whoever declines. */
export async function writeDeclined(connection: Connection, tester: Prisma.TesterWhereInput): Promise<void> {
  await writeToDesigner(connection, {
    kind: "place-declined",
    tester,
    content: ({ name, title }) => ({
      subject: `${name} declined a spot in “${title}”`,
      text: `${name} declined the spot that you offered them in “${title}”, so it is open again. You can offer it to somebody who is waiting.`,
      link: "Find a tester",
      page: "sizes",
    }),
  });
}

import "server-only";
import { writeToDesigner } from "@/features/calls/designer-mail-mutations";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";

/** Tells the designer that a tester had to stop. @param note what they wrote about it; "" for nothing. */
export async function writeGivenBack(
  connection: Connection,
  tester: Prisma.TesterWhereInput,
  note: string,
): Promise<void> {
  await writeToDesigner(connection, {
    kind: "place-given-back",
    tester,
    content: ({ name, title }) => ({
      subject: `${name} had to stop testing “${title}”`,
      text: `${name} had to stop testing “${title}”, so their spot is open again. What they sent stays.`,
      quote: note,
      link: "Find a tester",
      page: "sizes",
    }),
  });
}

import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { inDesignersWords } from "../own-words/own-words-data";
import { offerContent } from "./offer-computed";
import { writeToTesters } from "./tester-mail-mutations";

/**
 * Writes offers of spots, in the designer's words where they wrote some, in the transaction that causes them.
 *
 * @param testers of one call: where clause, by the proof of whoever acts.
 */
export async function writeOffers(connection: Connection, testers: Prisma.TesterWhereInput): Promise<void> {
  if (!isMailOn()) return;
  const kind = "place-offered";
  const content = await inDesignersWords(connection, { kind, testers, content: offerContent });
  await writeToTesters(connection, { kind, testers, content });
}

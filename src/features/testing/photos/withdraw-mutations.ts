import "server-only";
import type { Connection } from "@/server/transaction";
import type { TesterToForget } from "../forget/access";
import type { PhotoUse } from "./photo-views";

/** Deletes a tester's photos and takes back what they allowed. */
export async function forgetPhotos(connection: Connection, whose: TesterToForget): Promise<void> {
  await withdrawUses(connection, whose, []);
  await connection.photo.deleteMany({ where: { tester: whose.tester } });
}

/** Takes back every use but those that a tester still allows; each becomes something for the designer to do. */
export async function withdrawUses(
  connection: Connection,
  { testerId, callId, tester }: TesterToForget,
  stillAllowed: readonly PhotoUse[],
): Promise<void> {
  const where = { tester, use: { notIn: [...stillAllowed] } };
  const withdrawn = await connection.photoConsent.findMany({ where, select: { use: true } });
  await connection.photoConsent.deleteMany({ where });
  // Allowed again later, none is shown before the designer chooses it again.
  if (withdrawn.some(({ use }) => use === "pattern_page"))
    await connection.photo.updateMany({ where: { tester }, data: { shownSince: null } });
  await connection.photoWithdrawal.createMany({ data: withdrawn.map(({ use }) => ({ callId, testerId, use })) });
}

import "server-only";
import { patternOwnerScope, type PatternAccess } from "@/features/patterns/access";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { patternStays } from "../account-data/deletion-copy";
import { runningTests } from "../account-data/deletion-data";

/**
 * Deletes a pattern with its revisions, tests, reports and photos.
 *
 * @throws {AppError} "not-allowed" while testers of it are at work; "not-found" if it is deleted, or not the viewer's own.
 */
export async function deletePattern(access: PatternAccess): Promise<void> {
  await inTransaction(async (transaction) => {
    const where = patternOwnerScope(access);
    // Nobody begins a test, or a tester their work, in between.
    await transaction.$queryRaw`SELECT 1 FROM pattern WHERE id = ${access.patternId}::uuid FOR UPDATE`;
    await transaction.$queryRaw`SELECT 1 FROM call WHERE pattern_id = ${access.patternId}::uuid FOR UPDATE`;
    const running = await runningTests(transaction, where);
    if (running.length > 0) throw new AppError("not-allowed", patternStays(running));
    const { count } = await transaction.pattern.deleteMany({ where });
    if (count === 0) throw new AppError("not-found");
  });
}

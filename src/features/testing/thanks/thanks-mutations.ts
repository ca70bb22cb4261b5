import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { inTransaction } from "@/server/transaction";
import { testerScope, type TesterAccess } from "../home/access";
import type { RewardStep } from "./reward-steps";

/**
 * Stores how a tester would like to be named; "" for not at all. They may say so after the call is closed, too.
 *
 * @throws {AppError} "not-found" if access was lost in the meantime.
 */
export async function storeCreditName(access: TesterAccess, creditName: string): Promise<void> {
  const { count } = await database().testerContact.updateMany({
    where: { tester: testerScope(access) },
    data: { creditName },
  });
  if (count === 0) throw new AppError("not-found");
}

interface NotedReward {
  readonly step: RewardStep;
  /** For the step "payment". */
  readonly payment: string;
  readonly now: Date;
}

/**
 * Notes what testers got, whether the call is open or closed. Testers of other calls, and those without a report, are
 * left alone; a moment that was noted before stays.
 */
export async function noteRewards(
  access: CallAccess,
  testerIds: readonly string[],
  { step, payment, now }: NotedReward,
): Promise<void> {
  await inTransaction(async (transaction) => {
    const testers = await transaction.tester.findMany({
      where: { id: { in: [...testerIds] }, call: callEditScope(access), reportedAt: { not: null } },
      select: { id: true },
    });
    const ofThese = { testerId: { in: testers.map(({ id }) => id) } };
    await transaction.reward.createMany({ data: testers.map(({ id }) => ({ testerId: id })), skipDuplicates: true });
    const { where = {}, data } = changeOf({ step, payment, now });
    await transaction.reward.updateMany({ where: { ...ofThese, ...where }, data });
  });
}

function changeOf({ step, payment, now }: NotedReward): Pick<Prisma.RewardUpdateManyArgs, "where" | "data"> {
  switch (step) {
    case "pattern-sent":
      return { where: { patternSentAt: null }, data: { patternSentAt: now } };
    case "pattern-not-sent":
      return { data: { patternSentAt: null } };
    case "named":
      return { where: { namedAt: null }, data: { namedAt: now } };
    case "not-named":
      return { data: { namedAt: null } };
    case "payment":
      return { data: { payment } };
  }
}

import "server-only";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { testerScope, type TesterAccess } from "../home/access";

/** Stores which numbers a tester's text shows. @throws {AppError} "not-found" if access was lost in the meantime. */
export async function storeSizesShown(access: TesterAccess, sizesShown: "all" | "own"): Promise<void> {
  const { count } = await database().tester.updateMany({ where: testerScope(access), data: { sizesShown } });
  if (count === 0) throw new AppError("not-found");
}

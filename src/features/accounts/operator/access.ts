import "server-only";
import { database } from "@/server/database";
import { environment } from "@/server/environment";
import type { Proof } from "@/server/proof";
import type { Viewer } from "@/server/viewer";

/** Proof that somebody runs this Sizewright. It lets them see how mail is doing, and nothing of anybody else. */
export interface OperatorAccess extends Proof<"operator"> {
  readonly accountId: string;
}

/** @returns null for everybody but the account of `OPERATOR_EMAIL` or, without that setting, the first account. */
export async function operatorAccess({ accountId, email }: Viewer): Promise<OperatorAccess | null> {
  const { OPERATOR_EMAIL: named } = environment();
  const isOperator = named === undefined ? await isFirst(accountId) : email === named;
  return isOperator ? ({ accountId } as OperatorAccess) : null;
}

async function isFirst(accountId: string): Promise<boolean> {
  const first = await database().account.findFirst({
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
    select: { id: true },
  });
  return first?.id === accountId;
}

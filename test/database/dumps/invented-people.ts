import { createAccount } from "@/features/accounts/mutations";
import { patternAccess, invitationAccess, type HelperRole, type PatternAccess } from "@/features/patterns/access";
import { acceptInvitation, createInvitation } from "@/features/patterns/invitation-mutations";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";

/** Somebody with an account; invented like everybody here. */
export async function inventedPerson(name: string): Promise<Viewer> {
  const email = `${name.toLowerCase().replaceAll(/\W+/g, ".")}@example.org`;
  await createAccount({ name, email, password: `password of ${name}` });
  const { id: accountId } = await database().account.findUniqueOrThrow({ where: { email } });
  return { accountId, name, email, unit: "cm" };
}

/** Gives a helper a part in a pattern, by an invitation that they accept. */
export async function joins(helper: Viewer, owner: PatternAccess, role: HelperRole): Promise<PatternAccess> {
  const { token } = await createInvitation(owner, { role, note: `For ${helper.name}` });
  await acceptInvitation(await invitationAccess(token), helper);
  return await patternAccess(helper, owner.patternId, role);
}

import "server-only";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent } from "@/features/mail/schema";
import { applicationTarget } from "@/features/recruiting/applications/access";
import { invitationTarget } from "@/features/recruiting/invitations/access";
import { inTransaction, type Connection } from "@/server/transaction";

/** Mails an address the links to its tests and applications, all in one message; where it has none, nothing is sent. */
export async function mailOwnLinks(address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const parts = [...(await testLinks(transaction, address)), ...(await applicationLinks(transaction, address))];
    if (parts.length === 0) return;
    const content: MessageContent = {
      ...{ subject: "Your links to your tests", name: "", from: null },
      parts: [{ text: "Somebody, probably you, asked for the links to your tests. Here they are." }, ...parts, LAST],
      because: "because somebody asked for the links of this address",
    };
    await writeMessages(transaction, [{ kind: "own-links", address, content, about: {} }]);
  });
}

const LAST = {
  text: "Whoever has one of these links can open that page, so keep this message to yourself. If you did not ask for it, you need not do anything.",
};

async function testLinks(connection: Connection, address: string): Promise<MessageContent["parts"]> {
  const testers = await connection.tester.findMany({
    where: {
      ...{ contact: { email: { equals: address, mode: "insensitive" } }, invitedAt: { not: null } },
      ...{ declinedAt: null, withdrawnAt: null },
      OR: [{ acceptedAt: { not: null } }, { invitationExpiresAt: { gt: new Date() } }],
    },
    orderBy: { invitedAt: "desc" },
    select: { id: true, linkVersion: true, call: { select: { title: true } } },
  });
  return testers.flatMap(({ id, linkVersion, call: { title } }) => [
    { text: `The test “${title}”:` },
    { link: "Open your test", to: invitationTarget({ testerId: id, linkVersion }) },
  ]);
}

async function applicationLinks(connection: Connection, address: string): Promise<MessageContent["parts"]> {
  const applications = await connection.application.findMany({
    where: { contact: { email: address }, OR: [{ tester: null }, { tester: { acceptedAt: null } }] },
    orderBy: { createdAt: "desc" },
    select: { id: true, call: { select: { title: true } } },
  });
  return applications.flatMap(({ id, call: { title } }) => [
    { text: `Your application to “${title}”:` },
    { link: "Open your application", to: applicationTarget(id) },
  ]);
}

import "server-only";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent } from "@/features/mail/schema";
import type { Connection } from "@/server/transaction";
import { inTransaction } from "@/server/transaction";
import { emailLinkTarget } from "./access";
import { LINK_WORDS, type LinkMessageKind } from "./email-link-copy";

const HOUR_MS = 60 * 60_000;

/** Mails a link that signs in to whoever has an account with this address; nobody else gets anything. */
export async function mailSignInLink(address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    if (account !== null) await mailLink(transaction, { kind: "sign-in-link", address, account });
  });
}

/** Mails a link that creates an account; where the address has one already, its owner gets a link that signs in. */
export async function mailSignUpLink(address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    await mailLink(transaction, { kind: account === null ? "sign-up-link" : "sign-up-known", address, account });
  });
}

type AccountRow = Awaited<ReturnType<typeof accountOf>>;

function accountOf(connection: Connection, email: string) {
  return connection.account.findUnique({
    where: { email },
    select: { id: true, name: true, sessionVersion: true, emailVerifiedAt: true },
  });
}

interface NewLink {
  readonly kind: LinkMessageKind;
  readonly address: string;
  readonly account: AccountRow;
}

async function mailLink(connection: Connection, { kind, address, account }: NewLink): Promise<void> {
  const now = new Date();
  await connection.emailLink.updateMany({
    where: { address, usedAt: null, replacedAt: null },
    data: { replacedAt: now },
  });
  const { id } = await connection.emailLink.create({
    data: {
      ...{ address, accountId: account?.id ?? null, sessionVersion: account?.sessionVersion ?? null },
      expiresAt: new Date(now.getTime() + HOUR_MS),
    },
    select: { id: true },
  });
  const { subject, text, link, otherwise, because } = LINK_WORDS[kind];
  const content: MessageContent = {
    // A name that was given for an address by nobody knows whom is not sent to it.
    ...{ subject, because, from: null, name: account?.emailVerifiedAt == null ? "" : account.name },
    parts: [{ text }, { link, to: emailLinkTarget(id) }, { text: otherwise }],
  };
  const about = { emailLinkId: id, ...(account === null ? {} : { accountId: account.id }) };
  await writeMessages(connection, [{ kind, address, content, about }]);
}

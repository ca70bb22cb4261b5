import "server-only";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent } from "@/features/mail/schema";
import type { EmailLinkPurpose } from "@/generated/prisma/client";
import { inTransaction, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { emailLinkTarget } from "./access";
import { ADDRESS_WORDS, LINK_WORDS, type LinkMessageKind } from "./email-link-copy";

const HOUR_MS = 60 * 60_000;

/** Mails a link that signs in to whoever has an account with this address; nobody else gets anything. */
export async function mailSignInLink(address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    if (account !== null) await mailLink(transaction, { kind: "sign-in-link", purpose: "sign_in", address, account });
  });
}

/** Mails a link that creates an account; where the address has one already, its owner gets a link that signs in. */
export async function mailSignUpLink(address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    const kind = account === null ? "sign-up-link" : "sign-up-known";
    await mailLink(transaction, { kind, purpose: "sign_in", address, account });
  });
}

/** Mails whoever is signed in a link by which they confirm their address. */
export async function mailProofLink({ email: address }: Viewer): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    if (account !== null) await mailLink(transaction, { kind: "prove-address", purpose: "sign_in", address, account });
  });
}

/** Mails whoever is signed in a link by which they delete their account. */
export async function mailDeletionLink({ email: address }: Viewer): Promise<void> {
  await inTransaction(async (transaction) => {
    const account = await accountOf(transaction, address);
    if (account !== null)
      await mailLink(transaction, { kind: "delete-account", purpose: "delete_account", address, account });
  });
}

/** Mails a link to the address that somebody wants for their account; where it has one already, its owner is told. */
export async function mailAddressLink({ email }: Viewer, address: string): Promise<void> {
  await inTransaction(async (transaction) => {
    const [account, known] = [await accountOf(transaction, email), await accountOf(transaction, address)];
    if (account === null) return;
    if (known === null)
      return await mailLink(transaction, { kind: "change-address", purpose: "change_address", address, account });
    await writeToAddress(transaction, { kind: "address-known", address, account: known });
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
  readonly purpose: EmailLinkPurpose;
  readonly address: string;
  readonly account: AccountRow;
}

async function mailLink(connection: Connection, { kind, purpose, address, account }: NewLink): Promise<void> {
  const now = new Date();
  await connection.emailLink.updateMany({
    where: {
      ...{ purpose, usedAt: null, replacedAt: null },
      // An account is given one address at a time.
      ...(purpose === "change_address" ? { accountId: account?.id ?? null } : { address }),
    },
    data: { replacedAt: now },
  });
  const { id } = await connection.emailLink.create({
    data: {
      ...{ purpose, address, accountId: account?.id ?? null, sessionVersion: account?.sessionVersion ?? null },
      expiresAt: new Date(now.getTime() + HOUR_MS),
    },
    select: { id: true },
  });
  const { subject, text, link, otherwise, because } = LINK_WORDS[kind];
  const content: MessageContent = {
    ...{ subject, because, from: null, name: account === null ? "" : provenName(account) },
    parts: [{ text }, { link, to: emailLinkTarget(id) }, { text: otherwise }],
  };
  const about = { emailLinkId: id, ...(account === null ? {} : { accountId: account.id }) };
  await writeMessages(connection, [{ kind, address, content, about }]);
}

/** A name that was given for an address by nobody knows whom is not sent to it. */
function provenName({ name, emailVerifiedAt }: NonNullable<AccountRow>): string {
  return emailVerifiedAt === null ? "" : name;
}

interface ToAddress {
  readonly kind: keyof typeof ADDRESS_WORDS;
  readonly address: string;
  readonly account: NonNullable<AccountRow>;
}

/** Tells an address something about its account, without a link. */
export async function writeToAddress(connection: Connection, { kind, address, account }: ToAddress): Promise<void> {
  const { subject, text, because } = ADDRESS_WORDS[kind];
  const content: MessageContent = { subject, because, from: null, name: provenName(account), parts: [{ text }] };
  await writeMessages(connection, [{ kind, address, content, about: { accountId: account.id } }]);
}

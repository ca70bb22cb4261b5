import "server-only";
import { isMailOn } from "@/features/mail/mail-status";
import { writeMessages } from "@/features/mail/mutations";
import type { MessageContent, MessageKind } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";

interface ToDesigner {
  readonly kind: MessageKind;
  /** Whom it is about: where clause of the tester, by the proof of whoever acts. */
  readonly tester: Prisma.TesterWhereInput;
  /** Who they are, and which test it is. */
  readonly content: (about: { readonly name: string; readonly size: string; readonly title: string }) => {
    readonly subject: string;
    readonly text: string;
    /** Words of the tester; "" for none. */
    readonly quote?: string;
    readonly link: string;
    /** The page that the link opens, below the test's. */
    readonly page: string;
  };
}

/** Tells a test's designer at once what cannot wait; all else stands in their list of what needs them. */
export async function writeToDesigner(connection: Connection, { kind, tester, content }: ToDesigner): Promise<void> {
  if (!isMailOn()) return;
  const row = await connection.tester.findFirst({ where: tester, select: ABOUT });
  const owner = row?.call.pattern.memberships[0]?.account;
  if (row === null || owner === undefined) return;
  const { id: testerId, callId, code, size, call, contact } = row;
  const { subject, text, quote = "", link, page } = content({ name: contact?.name ?? code, size, title: call.title });
  const said: MessageContent = {
    ...{ subject, name: owner.name, from: null },
    parts: [{ text }, ...(quote === "" ? [] : [{ quote }]), { link, to: { path: `/calls/${callId}/${page}` } }],
    because: `because “${call.title}” is your test`,
  };
  await writeMessages(connection, [
    { kind, address: owner.email, content: said, about: { callId, testerId, accountId: owner.id } },
  ]);
}

const ABOUT = {
  ...{ id: true, callId: true, code: true, size: true },
  contact: { select: { name: true } },
  call: {
    select: {
      title: true,
      pattern: {
        select: {
          memberships: {
            where: { role: "owner" },
            take: 1,
            select: { account: { select: { id: true, name: true, email: true } } },
          },
        },
      },
    },
  },
} satisfies Prisma.TesterSelect;

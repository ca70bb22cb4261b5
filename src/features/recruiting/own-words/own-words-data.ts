import "server-only";
import type { MessageWords } from "@/features/mail/schema";
import type { Prisma } from "@/generated/prisma/client";
import type { Connection } from "@/server/transaction";
import { untilWords } from "@/ui/moment-copy";
import type { MailedTester } from "../invitations/mailed-tester-data";
import { changedMessage, type MessageChange } from "./changed-message-computed";
import type { FieldValues } from "./message-fields-computed";

export interface VersionedChange extends MessageChange {
  /** 0 where nothing was ever changed. */
  readonly version: number;
}

interface ChangeRow {
  readonly isOff: boolean;
  readonly note: string;
  readonly subject: string | null;
  readonly text: string | null;
  readonly version: number;
}

export function toChange({ isOff, note, subject, text, version }: ChangeRow): VersionedChange {
  return { isOff, note, words: subject === null || text === null ? null : { subject, text }, version };
}

/** What designers changed in a kind of mail of one call; undefined for nothing. */
export async function messageChange(
  connection: Connection,
  of: { readonly kind: string; readonly call: Prisma.CallWhereInput },
): Promise<MessageChange | undefined> {
  const row = await connection.callMessage.findFirst({ where: of });
  return row === null ? undefined : toChange(row);
}

/**
 * What a kind of mail says to each of some testers, as the designers of their calls changed it; null where it is switched off.
 *
 * @param content in Sizewright's words.
 */
export async function inDesignersWords(
  connection: Connection,
  mail: {
    readonly kind: string;
    readonly testers: Prisma.TesterWhereInput;
    readonly content: (tester: MailedTester) => MessageWords;
  },
): Promise<(tester: MailedTester) => MessageWords | null> {
  const { kind, testers, content } = mail;
  const rows = await connection.callMessage.findMany({ where: { kind, call: { testers: { some: testers } } } });
  const changes = new Map(rows.map((row) => [row.callId, toChange(row)]));
  return (tester) =>
    changedMessage(content(tester), { change: changes.get(tester.callId), values: testerValues(tester) });
}

/** What is filled in for a tester. */
export function testerValues({ name, size, dates, timeZone }: MailedTester): FieldValues {
  return {
    ...{ name, size },
    "swatch day": dates === null ? null : untilWords(dates.swatchBy.at, timeZone),
    "report day": dates === null ? null : untilWords(dates.reportBy.at, timeZone),
  };
}

/** What is filled in for an applicant: they have no size and no days yet. */
export function applicantValues(name: string): FieldValues {
  return { name, size: null, "swatch day": null, "report day": null };
}

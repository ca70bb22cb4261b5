import { momentWords } from "@/ui/moment-copy";

/** What became of a message. */
export interface MessageStatus {
  readonly id: string;
  readonly kind: string;
  readonly address: string;
  readonly testerId: string | null;
  readonly applicationId: string | null;
  readonly attempts: number;
  readonly createdAt: Date;
  readonly sentAt: Date | null;
  readonly failedAt: Date | null;
  /** The mail server's own words. */
  readonly reply: string | null;
}

/** Whether a message was sent, when, or why not. */
export function messageStatusWords({ address, sentAt, failedAt, attempts, reply }: MessageStatus, timeZone: string) {
  if (sentAt !== null) return `Sent to ${address} by e-mail on ${momentWords(sentAt, { timeZone, edge: "time" })}.`;
  const words = reply === null ? "" : ` The mail server says: “${reply}”.`;
  if (failedAt !== null) return `Not delivered to ${address}.${words}`;
  if (attempts === 0) return `On its way to ${address} by e-mail.`;
  return `Not sent to ${address} yet.${words} Sizewright tries again by itself.`;
}

import { afterAll, afterEach, beforeEach, vi } from "vitest";
import type { MessageContent } from "@/features/mail/schema";
import { writeMessages } from "@/features/mail/mutations";
import { nextMessage, sendMessage } from "@/features/mail/send-mutations";
import { database } from "@/server/database";
import { inTransaction } from "@/server/transaction";
import { recipientsOf, type startMailServer } from "./mail-server";

export const CONTENT: MessageContent = {
  subject: "You’re invited",
  name: "Bea <b>",
  parts: [{ text: "Would you make size M?" }, { facts: [["Start", "Monday 1 March"]] }, { quote: "1 < 2\nrows" }],
  from: { name: "Ana", email: "ana@example.org" },
  because: "because you applied to a test",
};

/** Writes one message to each address. */
export async function write(addresses: readonly string[], content: Partial<MessageContent> = {}): Promise<void> {
  const said = { ...CONTENT, ...content };
  const messages = addresses.map((address) => ({ kind: "place-offered", address, content: said, about: {} }) as const);
  await inTransaction((transaction) => writeMessages(transaction, messages));
}

/** Sends all that is due, as the worker's lane does. @returns how many messages it tried. */
export async function work(): Promise<number> {
  for (let tried = 0; ; tried += 1) {
    const id = await nextMessage();
    if (id === null) return tried;
    await sendMessage(id);
  }
}

/** Before each test of a file the outbox is empty and the server takes everything; time passes only as the test says. */
export function emptyOutbox(server: Awaited<ReturnType<typeof startMailServer>>): { takenAddresses: () => string[] } {
  beforeEach(async () => {
    vi.useFakeTimers({ toFake: ["Date"] });
    server.behaviour = {};
    server.taken.length = 0;
    await database().message.deleteMany();
    await database().refusedAddress.deleteMany();
  });
  afterEach(() => void vi.useRealTimers());
  afterAll(async () => await server.stop());
  return { takenAddresses: () => server.taken.flatMap(recipientsOf).toSorted() };
}

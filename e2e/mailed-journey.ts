import type { ParsedMail } from "mailparser";
import { Client } from "pg";
import { recipientsOf, startMailServer, type MailServer } from "../test/database/mail-server";
import { freePort } from "../src/start/free-port";
import { expect, test } from "./fixtures";
import { runServer } from "./running-server";

/** A server of its own over the tests' database and folder, which sends mail to a real SMTP server. */
export interface MailingServer {
  readonly at: (path: string) => string;
  readonly mail: MailServer;
  /** The newest mail to somebody with these words in its subject, once it has come. */
  readonly mailTo: (address: string, subject: string | RegExp) => Promise<ParsedMail>;
  /** As its operator does, at the same address. */
  restart(): Promise<void>;
  stop(): Promise<void>;
}

export async function startMailing(): Promise<MailingServer> {
  const turn = await ownTurn();
  const mail = await startMailServer();
  const { DATABASE_URL = "", NEXTAUTH_SECRET = "" } = process.env;
  const settings = {
    ...{ DATABASE_URL, NEXTAUTH_SECRET, PORT: String(await freePort()) },
    SMTP_URL: `smtp://127.0.0.1:${mail.port}`,
    MAIL_FROM: "Sizewright <mail@sizes.example>",
  };
  let server = await runServer({ settings });
  const found = (address: string, subject: string | RegExp) =>
    mail.taken.findLast((each) => recipientsOf(each).includes(address) && new RegExp(subject).test(each.subject ?? ""));
  return {
    at: (path) => `${server.address}${path}`,
    mail,
    mailTo: async (address, subject) => {
      await expect.poll(() => found(address, subject)?.subject, { timeout: 60_000 }).toBeDefined();
      const one = found(address, subject);
      if (one === undefined) throw new Error(`no mail about ${subject.toString()}`);
      return one;
    },
    restart: async () => {
      await server.stop();
      server = await runServer({ settings });
    },
    stop: async () => void (await Promise.all([server.stop(), mail.stop()]).finally(() => turn.end())),
  };
}

/** Waits until no other test sends mail: servers over the same database would take each other's. Waiting is not the test's time. */
async function ownTurn(): Promise<Client> {
  const own = test.info().timeout;
  test.setTimeout(0);
  const begun = performance.now();
  const client = new Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  await client.query("SELECT pg_advisory_lock(hashtext('mailing server'))");
  test.setTimeout(own + performance.now() - begun);
  return client;
}

/** The address below these words in a mail's plain text. */
export function linkIn(mail: ParsedMail, words: string): string {
  const lines = (mail.text ?? "").split("\n");
  const address = lines[lines.indexOf(`${words}:`) + 1];
  if (address === undefined || !address.startsWith("http")) throw new Error(`no link “${words}” in:\n${mail.text}`);
  return address;
}

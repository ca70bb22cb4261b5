import { once } from "node:events";
import { simpleParser, type ParsedMail } from "mailparser";
import { SMTPServer } from "smtp-server";

interface Behaviour {
  /** What it says to a recipient; null: yes. */
  readonly recipient?: (address: string) => Error | null;
  /** Whether it answers after it has taken a text, refuses it, or hangs up before it answers; left out: it answers. */
  readonly text?: (mail: ParsedMail) => Promise<Error | "hang-up" | null>;
}

/** A real SMTP server of a test. */
export interface MailServer {
  readonly port: number;
  /** All texts that it took, in order. */
  readonly taken: ParsedMail[];
  behaviour: Behaviour;
  stop(): Promise<void>;
  /** On the same port again. */
  start(): Promise<void>;
}

/** What an SMTP server says of a failure. */
export function refusal(responseCode: number, words: string): Error {
  return Object.assign(new Error(words), { responseCode });
}

export async function startMailServer(): Promise<MailServer> {
  let running: SMTPServer | undefined;
  const server = {
    port: 0,
    taken: [] as ParsedMail[],
    behaviour: {} as Behaviour,
    start: async () => {
      running = makeServer(server);
      const listening = running.listen(server.port, "127.0.0.1");
      await once(listening, "listening");
      const address = listening.address();
      if (typeof address === "object" && address !== null) server.port = address.port;
    },
    stop: () => new Promise<void>((resolve) => (running === undefined ? resolve() : running.close(resolve))),
  };
  await server.start();
  return server;
}

function makeServer(server: MailServer): SMTPServer {
  const made = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS", "AUTH"],
    closeTimeout: 100,
    onRcptTo: ({ address }, _session, callback) => callback(server.behaviour.recipient?.(address) ?? null),
    onData: (stream, session, callback) => {
      void simpleParser(stream).then(async (mail) => {
        server.taken.push(mail);
        const answer = (await server.behaviour.text?.(mail)) ?? null;
        if (answer !== "hang-up") return callback(answer);
        for (const { id, _socket } of made.connections) if (id === session.id) _socket.destroy();
      });
    },
  });
  // A client that is gone is no failure of the test.
  made.on("error", () => undefined);
  return made;
}

/** The addresses that a mail goes to. */
export function recipientsOf(mail: ParsedMail): string[] {
  return [mail.to ?? []].flat().flatMap(({ value }) => value.flatMap(({ address }) => address ?? []));
}

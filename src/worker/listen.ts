import { setTimeout as pause } from "node:timers/promises";
import { Client } from "pg";
import { log } from "@/server/log";

const AGAIN_AFTER_MS = 2_000;

interface Listening {
  readonly connectionString: string;
  readonly channel: string;
  /** Called with what is announced, and with null once a connection stands: something may have been missed before it. */
  readonly heard: (payload: string | null) => void;
}

/** Listens to a channel of PostgreSQL on a connection of its own, and connects again where that is lost. */
export function listen({ connectionString, channel, heard }: Listening): { stop(): Promise<void> } {
  let stopping = false;
  let client: Client | undefined;
  const connectOnce = async () => {
    const made = new Client({ connectionString, application_name: "sizewright worker" });
    client = made;
    const lost = new Promise<void>((resolve) => {
      made.once("error", () => resolve());
      made.once("end", () => resolve());
    });
    made.on("notification", ({ payload }) => heard(payload ?? null));
    await made.connect();
    await made.query(`LISTEN ${made.escapeIdentifier(channel)}`);
    heard(null);
    await lost;
  };
  const stayConnected = async () => {
    while (!stopping) {
      try {
        await connectOnce();
      } catch (error) {
        log.warn({ reason: error instanceof Error ? error.message : "unknown" }, "the worker cannot listen yet");
      }
      await client?.end().catch(() => undefined);
      if (!stopping) await pause(AGAIN_AFTER_MS, undefined, { ref: false });
    }
  };
  const ended = stayConnected();
  return {
    stop: async () => {
      stopping = true;
      await client?.end().catch(() => undefined);
      await ended;
    },
  };
}

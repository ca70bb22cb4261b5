import { createServer } from "node:net";

/** A port of 127.0.0.1 that nobody listens on just now: the wished one if it is free. */
export async function freePort(wished = 0): Promise<number> {
  return (await tryPort(wished)) ?? (await tryPort(0)) ?? Promise.reject(new Error("No free port was found."));
}

function tryPort(port: number): Promise<number | undefined> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(undefined));
    probe.listen({ port, host: "127.0.0.1" }, () => {
      const address = probe.address();
      probe.close(() => resolve(address === null || typeof address === "string" ? undefined : address.port));
    });
  });
}

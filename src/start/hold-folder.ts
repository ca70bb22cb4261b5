import { createHash } from "node:crypto";
import { realpathSync, rmSync } from "node:fs";
import { connect, createServer, type Server } from "node:net";
import { join } from "node:path";
import { hasCode, StartError } from "./start-error";

/**
 * Locks a data folder for this process. The lock is a listening socket, which the system closes when the process ends, however it ends; a file with a process id could be stale.
 *
 * @returns the release.
 * @throws {StartError} when another process has locked the folder.
 */
export async function holdFolder(folder: string): Promise<() => Promise<void>> {
  const name = socketName(realpathSync(folder));
  let server: Server;
  try {
    server = await listen(name);
  } catch (error) {
    if (!hasCode(error, "EADDRINUSE")) throw error;
    if (await answers(name)) {
      throw new StartError(
        `Sizewright is already running with the data in ${folder}. Stop it first, or choose another folder with SIZEWRIGHT_FOLDER.`,
      );
    }
    rmSync(name, { force: true });
    server = await listen(name);
  }
  return () => new Promise((resolve) => server.close(() => resolve()));
}

/** Linux has sockets without a file and Windows has pipes; elsewhere the socket is a file that a killed process leaves. */
function socketName(folder: string): string {
  const name = `sizewright-${createHash("sha256").update(folder).digest("hex").slice(0, 32)}`;
  if (process.platform === "linux") return `\0${name}`;
  return process.platform === "win32" ? `\\\\.\\pipe\\${name}` : join(folder, "held.sock");
}

function listen(name: string): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = createServer((socket) => socket.end());
    server.once("error", reject);
    server.listen(name, () => {
      server.unref();
      resolve(server);
    });
  });
}

function answers(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(name, () => {
      socket.destroy();
      resolve(true);
    });
    socket.once("error", () => resolve(false));
  });
}

import { createHash } from "node:crypto";
import {
  accessSync,
  chmodSync,
  chownSync,
  constants,
  existsSync,
  mkdirSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { holdFolder } from "./hold-folder";
import { initialise } from "./initialise-postgres";
import { storedSecret } from "./stored-secret";
import { copiedBinaries, postgresBinaries, type PostgresBinaries } from "./postgres-binaries";
import { canEnter, postgresUser, type RunAs } from "./postgres-user";
import { keepRunning } from "./keep-running";

export interface OwnPostgres {
  /** Where its database `sizewright` answers. */
  readonly url: string;
  stop(): Promise<void>;
}

export interface OwnPostgresPlace {
  /** An absolute path. Holds the log, and the data with its password where user postgres can enter. */
  readonly folder: string;
  /** Quicker, for it would not survive a power cut, and gone with its data once stopped. */
  readonly temporary?: boolean;
  readonly signal?: AbortSignal;
}

const SHARED = "/var/lib/sizewright";
/** Its log does not repeat the statements in which people's words stand. */
const SILENT = ["log_min_error_statement=panic"];
const UNSAFE = ["fsync=off", "full_page_writes=off"];

interface Ready {
  readonly binaries: PostgresBinaries;
  readonly user: RunAs | undefined;
  readonly home: string;
}

/**
 * Starts a real PostgreSQL of our own on a free port, with its data under `folder`; one at a time on a folder. Leftovers of a killed process are stopped and taken over.
 */
export async function startOwnPostgres({ folder, temporary = false, signal }: OwnPostgresPlace): Promise<OwnPostgres> {
  mkdirSync(folder, { recursive: true });
  const release = await holdFolder(folder);
  try {
    const { home, run } = await prepareData(folder, temporary, signal);
    const kept = await keepRunning(run);
    // For the owner's own tools, such as psql, while the server runs.
    const address = join(folder, "database-url");
    writeFileSync(address, `${kept.url}\n`, { mode: 0o600 });
    const stop = async () => {
      await kept.stop();
      rmSync(address, { force: true });
      if (temporary) for (const path of [home, folder]) rmSync(path, { recursive: true, force: true });
      await release();
    };
    return { url: kept.url, stop };
  } catch (error) {
    await release();
    throw error;
  }
}

/** What to run, with data that is made at the first start. */
async function prepareData(folder: string, temporary: boolean, signal: AbortSignal | undefined) {
  const { binaries, user, home } = await prepare(folder);
  // Beside the data, which may live elsewhere and outlive the folder.
  const password = storedSecret(join(home, "password"));
  const data = join(home, "data");
  if (!existsSync(data)) initialise({ binaries, user, home, password });
  const log = join(folder, "postgresql.log");
  const portFile = join(folder, "database-port");
  const settings = [...SILENT, ...(temporary ? UNSAFE : [])];
  return { home, run: { postgres: binaries.postgres, user, data, log, portFile, password, settings, signal } };
}

async function prepare(folder: string): Promise<Ready> {
  const binaries = await postgresBinaries();
  const user = postgresUser();
  const within = join(folder, "database");
  if (user === undefined) return { binaries, user, home: ownedBy(user, within) };
  const name = createHash("sha256").update(realpathSync(folder)).digest("hex").slice(0, 16);
  const shared = join(SHARED, name);
  const isInReach = canEnter(user, folder) && canEnter(user, binaries.root);
  // Data made while the folder was out of reach stay where they are.
  if (isInReach && !existsSync(join(shared, "data"))) return { binaries, user, home: ownedBy(user, within) };
  // A checkout below /root: user postgres gets through to neither the binaries nor the data there.
  mkdirSync(SHARED, { recursive: true });
  chmodSync(SHARED, 0o755);
  return { binaries: copiedBinaries(binaries, SHARED), user, home: ownedBy(user, shared) };
}

function ownedBy(user: RunAs | undefined, home: string): string {
  mkdirSync(home, { recursive: true, mode: 0o700 });
  if (user === undefined) accessSync(home, constants.R_OK | constants.W_OK | constants.X_OK);
  else chownSync(home, user.uid, user.gid);
  return home;
}

import { spawnSync } from "node:child_process";
import { chownSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PostgresBinaries } from "./postgres-binaries";
import type { RunAs } from "./postgres-user";
import { StartError } from "./start-error";

interface NewData {
  readonly binaries: PostgresBinaries;
  readonly user: RunAs | undefined;
  readonly home: string;
  readonly password: string;
}

/** Makes `home/data`. It is made beside and renamed, so that what stands there is whole even if a start was killed. */
export function initialise({ binaries, user, home, password }: NewData): void {
  const beside = join(home, "data.new");
  rmSync(beside, { recursive: true, force: true });
  const passwordFolder = mkdtempSync(join(tmpdir(), "sizewright-"));
  const passwordFile = join(passwordFolder, "password");
  try {
    writeFileSync(passwordFile, `${password}\n`, { mode: 0o600 });
    for (const path of [passwordFolder, passwordFile]) if (user !== undefined) chownSync(path, user.uid, user.gid);
    const made = spawnSync(
      binaries.initdb,
      [
        `--pgdata=${beside}`,
        "--auth=scram-sha-256",
        "--username=sizewright",
        `--pwfile=${passwordFile}`,
        "--encoding=UTF8",
        // The same order of letters on every machine, whatever locales it has.
        "--locale=C",
        "--locale-provider=builtin",
        "--builtin-locale=C.UTF-8",
      ],
      { ...user, cwd: home, encoding: "utf8", env: { ...process.env, LC_ALL: "C" } },
    );
    if (made.status !== 0) {
      throw new StartError(
        `PostgreSQL could not create its data in ${home}: ${made.error?.message ?? made.stderr.trim()}`,
      );
    }
    renameSync(beside, join(home, "data"));
  } finally {
    rmSync(passwordFolder, { recursive: true, force: true });
  }
}

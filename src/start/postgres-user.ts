import { spawnSync } from "node:child_process";
import { StartError } from "./start-error";

export interface RunAs {
  readonly uid: number;
  readonly gid: number;
}

/** PostgreSQL refuses to run as root: there it runs as user postgres, who is made where missing. Elsewhere as ourselves. */
export function postgresUser(): RunAs | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const found = lookUp();
  if (found !== undefined) return found;
  spawnSync("useradd", ["--system", "--user-group", "--no-create-home", "--shell", "/bin/false", "postgres"]);
  const made = lookUp();
  if (made === undefined) {
    throw new StartError(
      "PostgreSQL does not run as root, and the user postgres could not be made. Make one (useradd postgres), or set DATABASE_URL.",
    );
  }
  return made;
}

function lookUp(): RunAs | undefined {
  const [uid, gid] = ["-u", "-g"].map((flag) => {
    const id = spawnSync("id", [flag, "postgres"], { encoding: "utf8" });
    return id.status === 0 ? Number(id.stdout) : undefined;
  });
  return uid === undefined || gid === undefined ? undefined : { uid, gid };
}

/** Whether that user gets through every folder on the way to this one. */
export function canEnter(user: RunAs, folder: string): boolean {
  return spawnSync("test", ["-x", folder], { ...user, cwd: "/" }).status === 0;
}

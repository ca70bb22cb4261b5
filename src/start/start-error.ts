/** Why a start failed, in one sentence for the person at the terminal. */
export class StartError extends Error {}

const OTHER_FOLDER = "or choose another folder with SIZEWRIGHT_FOLDER";

/** An error of the file system as a person can act on it; any other error as it is. */
export function explained(error: unknown): unknown {
  if (!(error instanceof Error) || !("path" in error) || typeof error.path !== "string") return error;
  if (hasCode(error, "EACCES", "EPERM", "EROFS")) {
    return new StartError(
      `Sizewright has no permission to use ${error.path}. Give this user permission to read and write it, ${OTHER_FOLDER}.`,
    );
  }
  if (hasCode(error, "ENOTDIR", "EEXIST")) {
    return new StartError(`${error.path} is not a folder. Move that file away, ${OTHER_FOLDER}.`);
  }
  if (hasCode(error, "ENOSPC", "EDQUOT")) {
    return new StartError(`The disk is full at ${error.path}. Free some space, ${OTHER_FOLDER}.`);
  }
  return error;
}

/** Whether an error of Node or PostgreSQL carries one of these codes. */
export function hasCode(error: unknown, ...codes: readonly string[]): boolean {
  return error instanceof Error && "code" in error && typeof error.code === "string" && codes.includes(error.code);
}

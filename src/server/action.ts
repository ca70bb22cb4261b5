import "server-only";
import { isDatabaseUnavailable } from "./database-unavailable";
import { AppError } from "./errors";
import { optionalViewer, type Viewer } from "./viewer";

export interface Failure {
  readonly status: "failed";
  readonly says: string;
}

/**
 * A server action for signed-in people: known failures come back as a sentence, unknown ones are thrown on.
 *
 * @param run the action; it gets the viewer first, and parses whatever else it is handed.
 */
export function viewerAction<Input extends unknown[], Result>(
  run: (viewer: Viewer, ...input: Input) => Promise<Result>,
): (...input: Input) => Promise<Result | Failure> {
  return async (...input) => {
    try {
      return await run(await actingViewer(), ...input);
    } catch (error) {
      return { status: "failed", says: sentenceOf(error) };
    }
  };
}

/** The acting person. Not redirected to sign in, because that would lose what was typed. @throws {AppError} "signed-out". */
export async function actingViewer(): Promise<Viewer> {
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("signed-out");
  return viewer;
}

/** The message for a failure that a person can act on; other failures are thrown again. */
export function sentenceOf(error: unknown): string {
  if (error instanceof AppError) return error.message;
  if (isDatabaseUnavailable(error)) return new AppError("database-away").message;
  throw error;
}

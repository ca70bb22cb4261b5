import "server-only";
import { AppError } from "./errors";
import { isDatabaseAway } from "./database-away";
import { requireViewer, type Viewer } from "./viewer";

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
      return await run(await requireViewer(), ...input);
    } catch (error) {
      if (isDatabaseAway(error)) return { status: "failed", says: new AppError("database-away").message };
      if (error instanceof AppError) return { status: "failed", says: error.message };
      throw error;
    }
  };
}

/** The process is ending during a task, which has no result and is run again at the next start. */
export class TaskInterrupted extends Error {}

/**
 * Has a thread do a task that may take long.
 *
 * @param signal stops it.
 * @returns what it prints, null where it was stopped, also at its limit of time.
 * @throws {TaskInterrupted} where the thread was ended with the process.
 */
export type RunTask<Task> = (task: Task, signal?: AbortSignal) => Promise<string | null>;

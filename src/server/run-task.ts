/**
 * Has a thread do a task that may take long.
 *
 * @param signal stops it.
 * @returns what it prints, null where it was stopped, also at its limit of time.
 */
export type RunTask<Task> = (task: Task, signal?: AbortSignal) => Promise<string | null>;

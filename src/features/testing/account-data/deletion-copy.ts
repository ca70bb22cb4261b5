import type { RunningTest } from "./deletion-data";

/** Why an account cannot be deleted now. */
export function runningWords(running: readonly RunningTest[]): string {
  const tests = running.map(({ title, unfinished }) => {
    const testers = unfinished === 1 ? "1 tester who is" : `${unfinished} testers who are`;
    return `“${title}” is running, with ${testers} not finished.`;
  });
  return `${tests.join(" ")} Their work would be lost. Wait until they are finished, or close the test, then delete your account.`;
}

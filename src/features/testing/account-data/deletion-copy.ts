import type { OwnPattern, RunningTest } from "./deletion-data";

/** Why an account cannot be deleted now. */
export function accountStays(running: readonly RunningTest[]): string {
  return `${runningWords(running)} Their work would be lost. Wait until they are finished, or close the test, then delete your account.`;
}

/** Why a pattern cannot be deleted now. */
export function patternStays(running: readonly RunningTest[]): string {
  return `${runningWords(running)} Their work would be lost. Wait until they are finished, or close the test, then delete the pattern.`;
}

function runningWords(running: readonly RunningTest[]): string {
  const tests = running.map(({ title, unfinished }) => {
    const testers = unfinished === 1 ? "1 tester who is" : `${unfinished} testers who are`;
    return `“${title}” is running, with ${testers} not finished.`;
  });
  return tests.join(" ");
}

/** What goes with a pattern, to stand after its name: ` with every revision, 2 tests, and the reports … of 14 testers.` */
export function goesWithPattern({ tests, testers, helpers }: OwnPattern): string {
  return [
    " with every revision",
    tests === 0 ? "" : `, ${counted(tests, "test", "tests")}`,
    testers === 0 ? "" : `, and the reports, photos and pages of ${counted(testers, "tester", "testers")}`,
    ".",
    helpers === 0 ? "" : helpers === 1 ? " Its helper loses it too." : ` Its ${helpers} helpers lose it too.`,
  ].join("");
}

export function counted(many: number, one: string, several: string): string {
  return many === 1 ? `1 ${one}` : `${many} ${several}`;
}

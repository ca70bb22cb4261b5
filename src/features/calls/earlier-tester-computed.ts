/**
 * The id that a tester of an earlier test has in the analysis of a test that counts it too: codes are unique in their own
 * test only.
 */
export function earlierTesterId(testerId: string): string {
  return `t${testerId.replaceAll("-", "")}`;
}

/** The other way; null for an id of another kind. */
export function testerIdOfEarlier(id: string): string | null {
  const parts = /^t([0-9a-f]{8})([0-9a-f]{4})([0-9a-f]{4})([0-9a-f]{4})([0-9a-f]{12})$/.exec(id);
  return parts === null ? null : parts.slice(1).join("-");
}

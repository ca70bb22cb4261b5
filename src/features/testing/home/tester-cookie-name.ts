/** Name of the cookie that gives a browser access to one tester's pages. */
export function testerCookieName(testerId: string): string {
  return `sizewright-tester-${testerId}`;
}

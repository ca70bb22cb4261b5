/** Name of the cookie by which a browser is let in to one tester's pages. */
export function testerCookieName(testerId: string): string {
  return `sizewright-tester-${testerId}`;
}

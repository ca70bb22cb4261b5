/** The key under which a browser stores an application while it is typed. */
export function storageKeyOf(callId: string): string {
  return `sizewright-apply-${callId}`;
}

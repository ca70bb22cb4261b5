/** Where a browser keeps what somebody types who is about to apply to a call. */
export function keptKey(callId: string): string {
  return `sizewright-apply-${callId}`;
}

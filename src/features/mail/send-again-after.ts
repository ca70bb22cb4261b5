/** Some four days, as RFC 5321 (4.5.4.1) asks of whoever sends mail. */
export const MOST_ATTEMPTS = 24;

const FIRST_MS = 30_000;
const LONGEST_MS = 6 * 60 * 60_000;
const SERVER_FIRST_MS = 2_000;
const SERVER_LONGEST_MS = 5 * 60_000;

/** How long until a message is tried again, in ms: twice as long each time, and never together with others. */
export function afterAttempts(attempts: number, random = Math.random()): number {
  return jittered(Math.min(FIRST_MS * 2 ** (attempts - 1), LONGEST_MS), random);
}

/** How long a mail server that is away is left in peace, in ms. */
export function afterServerFailures(failures: number, random = Math.random()): number {
  return jittered(Math.min(SERVER_FIRST_MS * 2 ** (failures - 1), SERVER_LONGEST_MS), random);
}

/** Between three quarters of it and all of it. */
function jittered(longestMs: number, random: number): number {
  return longestMs * (0.75 + 0.25 * random);
}

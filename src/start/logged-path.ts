/** What follows these in an address is a secret that gives access. */
const BEFORE_SECRET = /^\/(invitations|invited|applications)\//;

/** A request's path as it may be logged: without its query and without secrets. */
export function loggedPath(url: string | undefined): string {
  const path = url?.split("?", 1)[0] ?? "/";
  const [before] = BEFORE_SECRET.exec(path) ?? [];
  return before === undefined ? path : `${before}…`;
}

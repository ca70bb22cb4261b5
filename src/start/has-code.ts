/** Whether an error of Node or PostgreSQL carries one of these codes. */
export function hasCode(error: unknown, ...codes: readonly string[]): boolean {
  return error instanceof Error && "code" in error && typeof error.code === "string" && codes.includes(error.code);
}

/**
 * Takes from a database error what PostgreSQL says of the row that it refused, because that holds what people wrote, and
 * errors that nobody expects are printed.
 */
export async function withoutRowDetails<Result>(query: Promise<Result>): Promise<Result> {
  try {
    return await query;
  } catch (error) {
    const cause = error instanceof Error ? error.cause : undefined;
    if (typeof cause === "object" && cause !== null && "detail" in cause) cause.detail = undefined;
    throw error;
  }
}

import { callResultsSchema, type CallResults } from "./call-results-schema";

/**
 * Results as the database takes them, so that nobody needs to read them in between.
 *
 * @returns two lines of JSON: everything but the testers' own parts, and a list of these.
 * @throws {ZodError} where the results are not of the shape in which they are read again.
 */
export function printResults(results: CallResults): string {
  const { testers, ...whole } = callResultsSchema.parse(results);
  return `${JSON.stringify(whole)}\n${JSON.stringify(testers)}`;
}

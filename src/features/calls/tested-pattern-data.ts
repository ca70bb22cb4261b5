import "server-only";
import { patternOfPieces, type PatternDocument } from "@/engine/pattern";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";

/** What of a pattern the call's testers make and measure: all of it, or some pieces. */
export async function testedPattern(
  access: CallAccess,
  pattern: PatternDocument,
  connection: Connection = database(),
): Promise<PatternDocument> {
  const call = await connection.call.findUnique({ where: callScope(access), select: { pieces: true } });
  return patternOfPieces(pattern, call?.pieces ?? []);
}

import "server-only";
import type { GapsOutput } from "@/engine/gaps";
import type { CallDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callDocument, callTesters } from "@/features/calls/data";
import { AppError } from "@/server/errors";
import { analysisInput } from "./analysis-input";
import { storedAnalysis } from "./data";

export interface LoadedAnalysis {
  readonly document: CallDocument;
  readonly output: GapsOutput;
  /** What a tester is called, by her id in the document: her name, or the id where she has none. */
  readonly names: ReadonlyMap<string, string>;
}

/**
 * The call as it stands now with its analysis, null while the worker has not reckoned it.
 *
 * @throws {AppError} "too-long" where reckoning it was stopped.
 */
export async function loadAnalysis(access: CallAccess): Promise<LoadedAnalysis | null> {
  const [document, testers] = await Promise.all([callDocument(access), callTesters(access)]);
  const output = await storedAnalysis(access, analysisInput(document));
  if (output === "stopped") throw new AppError("too-long");
  if (output === null) return null;
  return { document, output, names: new Map(testers.map(({ code, name }) => [code, name ?? code])) };
}

import "server-only";
import { gaps, type GapsOutput } from "@/engine/gaps";
import type { CallDocument } from "@/engine/pattern";
import type { CallAccess } from "@/features/calls/access";
import { callDocument, callTesters } from "@/features/calls/data";
import { analysisInput } from "./analysis-input";
import { storedAnalysis } from "./data";

export interface LoadedAnalysis {
  readonly document: CallDocument;
  readonly output: GapsOutput;
  /** What a tester is called, by her id in the document: her name, or the id where she has none. */
  readonly names: ReadonlyMap<string, string>;
}

/** The call as it stands now with its analysis: the one that is kept, else reckoned here and not kept. Null while it is being reckoned. */
export async function loadAnalysis(access: CallAccess): Promise<LoadedAnalysis | null> {
  const [document, testers] = await Promise.all([callDocument(access), callTesters(access)]);
  const output = (await storedAnalysis(access, analysisInput(document))) ?? gaps(document);
  return { document, output, names: new Map(testers.map(({ code, name }) => [code, name ?? code])) };
}

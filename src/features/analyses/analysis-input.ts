import { createHash } from "node:crypto";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { canonicalJson, type CallDocument } from "@/engine/pattern";

/** What an analysis is kept under: the document's bytes in canonical form, and the engine that reckoned. */
export interface AnalysisInput {
  readonly inputHash: string;
  readonly engineVersion: string;
}

/** The key of a call document's analysis. */
export function analysisInput(document: CallDocument): AnalysisInput {
  return {
    inputHash: createHash("sha256").update(canonicalJson(document)).digest("hex"),
    engineVersion: ENGINE_VERSION,
  };
}

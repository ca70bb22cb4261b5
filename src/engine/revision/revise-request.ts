import { z } from "zod";
import { callFaults, callSchema, idSchema, parseWith, type CallDocument, type Parsed } from "../pattern";
import type { CauseInput } from "../gaps";

/** One proposal as `revise` reads it. */
export const acceptedProposalSchema = z.strictObject({
  kind: z.enum(["allowance", "settle", "stretch", "count", "offset", "step", "from"]),
  id: z.union([idSchema, z.literal("all")]),
  fabric: idSchema.optional(),
  direction: z.enum(["stitches", "rows"]).optional(),
  size: idSchema.optional(),
  by: z.enum(["input", "published"]),
});

const requestSchema = z.strictObject({
  call: callSchema,
  take: z.array(acceptedProposalSchema),
  slack: z.number().min(0, { error: "must be 0 or more." }).max(1, { error: "must be at most 1." }).optional(),
});

/** A proposal that the designer takes: corrected where it stands and the counts solved anew, or the published numbers moved. */
export type AcceptedProposal = CauseInput & { readonly by: "input" | "published" };

export interface ReviseRequest {
  readonly call: CallDocument;
  readonly take: readonly AcceptedProposal[];
  /** Deviation from a target that costs nothing where counts are solved anew, in tolerances; ¼ where left out. */
  readonly slack?: number;
}

/** Reads what `revise` takes. @param value parsed JSON of any shape. */
export function parseReviseRequest(value: unknown): Parsed<ReviseRequest> {
  return parseWith(requestSchema, value, ({ call }) =>
    callFaults(call).map(({ path, says }) => ({ path: path === "$" ? "call" : `call.${path}`, says })),
  );
}

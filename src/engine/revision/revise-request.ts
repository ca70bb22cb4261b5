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

/** An accepted proposal: by `input` with the counts solved again, or by `published` with the published numbers changed. */
export type AcceptedProposal = CauseInput & { readonly by: "input" | "published" };

export interface ReviseRequest {
  readonly call: CallDocument;
  readonly take: readonly AcceptedProposal[];
  /** Deviation from a target without cost when counts are solved again, in tolerances; default ¼. */
  readonly slack?: number;
}

/** Reads the input of `revise`. @param value parsed JSON of any shape. */
export function parseReviseRequest(value: unknown): Parsed<ReviseRequest> {
  return parseWith(requestSchema, value, ({ call }) =>
    callFaults(call).map(({ path, says }) => ({ path: path === "$" ? "call" : `call.${path}`, says })),
  );
}

export { adjustInput } from "./adjust-input";
export { carriedOver } from "./carried-over";
export { combinedCall } from "./combined-call";
export { correctedSizes } from "./corrected-sizes";
export { expectations, type Expectation } from "./expectations";
export { applyInstructionErrors, type InstructionError } from "./instruction-errors";
export { reviseCall } from "./revise-call";
export {
  parseReviseRequest,
  acceptedProposalSchema,
  type ReviseRequest,
  type AcceptedProposal,
} from "./revise-request";
export { afterRevisionSchema, changeSchema, expectationSchema, instructionErrorSchema } from "./revision-schema";

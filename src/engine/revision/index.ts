export { adjustInput } from "./adjust-input";
export { expectations, type Expectation } from "./expectations";
export type { Change } from "./changed-numbers";
export { replayedCall, type InstructionError } from "./replayed-call";
export { reviseCall, type AfterRevision, type Revision } from "./revise-call";
export {
  parseReviseRequest,
  acceptedProposalSchema,
  type ReviseRequest,
  type AcceptedProposal,
} from "./revise-request";

export { adjustInput } from "./adjust-input";
export { expectations, type Expectation } from "./expectations";
export type { Change } from "./pattern-changes";
export { replayedCall, type MisworkedCount } from "./replayed-call";
export { reviseCall, type AfterRevision, type Revision } from "./revise-call";
export { parseReviseRequest, takenSchema, type ReviseRequest, type Taken } from "./revise-request";

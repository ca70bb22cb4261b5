export { sanityRemarks } from "./sanity-remarks";
export type { LengthWords, SanityKind, SanityRemark } from "./sanity-remark";
export { USUAL_STRETCH } from "./stretched";

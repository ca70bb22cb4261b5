export { sanityRemarks } from "./sanity-remarks";
export type { FormatLength, SanityKind, SanityRemark } from "./sanity-remark";

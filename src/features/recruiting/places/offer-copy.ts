/** Why an applicant is not invited whom only a size is missing. */
export const NO_SIZE_YET = "They have no size yet.";

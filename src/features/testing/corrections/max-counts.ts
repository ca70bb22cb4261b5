/** More counts than one correction touches; in its form each has a row a size. */
export const MAX_COUNTS = 12;

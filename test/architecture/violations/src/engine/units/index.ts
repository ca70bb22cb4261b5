export const CM_PER_INCH = 2.54;

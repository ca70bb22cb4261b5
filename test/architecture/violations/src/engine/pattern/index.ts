export const FACE = "pattern";

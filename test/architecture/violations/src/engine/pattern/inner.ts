export const INNER = "inside the pattern package";

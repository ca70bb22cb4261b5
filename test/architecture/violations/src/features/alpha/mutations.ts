export const CHANGED = "changed";

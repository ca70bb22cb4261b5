export const PLUMBING = "plumbing";

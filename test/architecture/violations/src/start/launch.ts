export const LAUNCH = "launch";

export const FIXTURE = "fixture";

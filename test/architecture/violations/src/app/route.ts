export const ROUTE = "route";

export const database = "database";

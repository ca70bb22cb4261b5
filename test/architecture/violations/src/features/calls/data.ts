export const data = 1;

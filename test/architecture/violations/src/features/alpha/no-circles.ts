import { BACK } from "./no-circles-back";

export const FORTH = `forth and ${BACK}`;

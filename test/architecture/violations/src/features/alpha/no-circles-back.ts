import { FORTH } from "./no-circles";

export const BACK = `back and ${FORTH}`;

import { data } from "../recruiting/data";

export const outward = data;

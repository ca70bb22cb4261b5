import { data } from "../calls/data";

export const outward = data;

import { data } from "../results/data";

export const outward = data;

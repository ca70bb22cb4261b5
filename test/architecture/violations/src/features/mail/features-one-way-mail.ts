import { data } from "../patterns/data";

export const outward = data;

import { data } from "../testing/data";

export const outward = data;

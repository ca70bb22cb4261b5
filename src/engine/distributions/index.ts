export { binomialUpperTail } from "./binomial";
export { fQuantile } from "./f";
export { normalChance, normalQuantile } from "./normal";
export { studentTChance, studentTQuantile } from "./student-t";

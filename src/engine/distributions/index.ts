export {
  binomialUpperTail,
  fQuantile,
  normalChance,
  normalDensity,
  normalQuantile,
  studentTChance,
  studentTQuantile,
} from "./distributions";
export { NORMAL_NODES } from "./normal-nodes";

export {
  binomialUpperTail,
  fQuantile,
  normalChance,
  normalQuantile,
  studentTChance,
  studentTQuantile,
} from "./distributions";
export { NORMAL_NODES } from "./normal-nodes";

export {
  binomialUpperTail,
  fQuantile,
  normalChance,
  normalQuantile,
  studentTChance,
  studentTQuantile,
} from "./distributions";

export { INNER } from "../../engine/pattern/inner";

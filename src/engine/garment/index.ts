export { outlineGarment } from "./outline";
export { parseOutlineInput } from "./outline-input";

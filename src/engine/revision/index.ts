export { adjustInput } from "./adjust-input";

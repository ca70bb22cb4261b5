export { CHANGED } from "./mutations";

export { CHANGED } from "../mutations";

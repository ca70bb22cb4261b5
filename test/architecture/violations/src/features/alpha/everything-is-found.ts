export { GONE } from "./gone";

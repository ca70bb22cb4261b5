export { LOADED } from "../beta/loaders";

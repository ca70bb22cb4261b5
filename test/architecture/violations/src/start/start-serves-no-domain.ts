export { LOADED } from "../features/beta/loaders";

export { PLUMBING } from "../server/plumbing";

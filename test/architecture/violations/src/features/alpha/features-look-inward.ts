export { LAUNCH } from "../../start/launch";

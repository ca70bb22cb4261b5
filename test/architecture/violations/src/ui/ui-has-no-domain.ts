export { FACE } from "../engine/pattern";

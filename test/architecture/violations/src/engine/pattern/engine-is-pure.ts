export { readFileSync } from "node:fs";

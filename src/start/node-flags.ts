import { extname, join } from "node:path";

const OWN_EXTENSION = extname(import.meta.filename);

/**
 * Node's flags for another of our programs, as this one runs: built JavaScript, or TypeScript while developing.
 * The features' code loads only under the condition `react-server`.
 */
export function nodeFlags(program: "worker/main" | "start/seed-demo"): string[] {
  const file = join(import.meta.dirname, "..", `${program}${OWN_EXTENSION}`);
  const loader = OWN_EXTENSION === ".ts" ? ["--import", "tsx"] : [];
  return ["--conditions", "react-server", ...loader, file];
}

import { extname, join } from "node:path";
import { spawn } from "node:child_process";
import { StartError } from "./start-error";

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

/**
 * Seeds the demo's data in a separate process: the features' code is server-only and loads only under the condition `react-server`, under which Next itself would not.
 */
export async function seedDemo(root: string): Promise<void> {
  const child = spawn(process.execPath, nodeFlags("start/seed-demo"), {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
  const code = await new Promise<number | null>((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", resolve);
  });
  if (code !== 0) throw new StartError("The demo data could not be created. The reason is printed above.");
}

import { spawn } from "node:child_process";
import { nodeFlags } from "./node-flags";
import { StartError } from "./start-error";

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

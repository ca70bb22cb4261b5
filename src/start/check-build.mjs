import { existsSync } from "node:fs";

// Plain JavaScript, because it runs before anything is built.
if (!existsSync(new URL("../../dist/start/main.js", import.meta.url))) {
  console.error("Sizewright is not built yet. Run npm run build first, or npm run demo, which does both.");
  process.exitCode = 1;
}

import { existsSync } from "node:fs";

// Plain JavaScript, for it runs where nothing has been built yet.
if (!existsSync(new URL("../../dist/start/main.js", import.meta.url))) {
  console.error("Nothing is built yet. Run npm run build first, or npm run demo, which does both.");
  process.exitCode = 1;
}

import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { resolve } from "node:path";
import { build } from "esbuild";

const BUNDLE = resolve("node_modules/.cache/sizewright/engine.mjs");

/** The command line as it runs, bundled: tsx would read the engine's sources anew for each of the tests' calls. */
export async function bundledEngine() {
  mkdirSync(resolve(BUNDLE, ".."), { recursive: true });
  await build({
    ...{ entryPoints: ["src/cli/engine.ts"], outfile: BUNDLE, bundle: true, platform: "node", format: "esm" },
    packages: "external",
  });
  return (verbs: readonly string[], input: string) => answerOf([process.execPath, BUNDLE, ...verbs], input);
}

/** The command that people run. */
export function typedEngine(verbs: readonly string[], input: string) {
  return answerOf(["npm", "run", "--silent", "engine", "--", ...verbs], input);
}

function answerOf([program = "", ...flags]: readonly string[], input: string) {
  const ran = spawnSync(program, flags, { input, encoding: "utf8" });
  return { status: ran.status, output: ran.stdout, errors: ran.stderr };
}

import { spawn } from "node:child_process";
import { installChromium } from "./install-chromium";

interface Step {
  readonly name: string;
  readonly command: readonly string[];
  /** On 2 cores; a step that takes longer fails, so that it is mended or given more on purpose. */
  readonly budgetSeconds: number;
}

const node = (file: string, ...flags: string[]) => [process.execPath, `node_modules/${file}`, ...flags];
const vitest = (project: string) => node("vitest/vitest.mjs", "run", "--project", project);
const next = (...flags: string[]) => node("next/dist/bin/next", ...flags);
const tsc = (project: string) => node("typescript/bin/tsc", "--noEmit", "-p", project);
// The features' code loads only under this condition, and the browser tests lay their data with it.
const playwright = [process.execPath, "--conditions", "react-server", "node_modules/@playwright/test/cli.js", "test"];

const npm = (script: string) => ["npm", "run", "--silent", script];
const tsx = (file: string) => [process.execPath, "--import", "tsx", file];

/**
 * One stage after another. The lanes of a stage need nothing of each other and run at once, a lane for each core; the
 * steps of a lane run in order.
 */
const STAGES: readonly (readonly (readonly Step[])[])[] = [
  [
    [
      { name: "generate", command: npm("generate"), budgetSeconds: 30 },
      { name: "route types", command: next("typegen"), budgetSeconds: 60 },
    ],
  ],
  [
    [{ name: "lint", command: node("eslint/bin/eslint.js", "--max-warnings", "0", "."), budgetSeconds: 240 }],
    [
      { name: "types", command: tsc("."), budgetSeconds: 150 },
      { name: "format", command: node("prettier/bin/prettier.cjs", "--check", "."), budgetSeconds: 60 },
      { name: "engine's types", command: tsc("src/engine/tsconfig.json"), budgetSeconds: 60 },
      { name: "layers", command: vitest("layers"), budgetSeconds: 120 },
      { name: "schema in step", command: vitest("schema"), budgetSeconds: 120 },
    ],
  ],
  [
    [
      { name: "build", command: npm("build"), budgetSeconds: 300 },
      { name: "first start", command: tsx("test/first-start.ts"), budgetSeconds: 480 },
    ],
    [
      { name: "unit tests", command: vitest("unit"), budgetSeconds: 420 },
      { name: "database tests", command: vitest("database"), budgetSeconds: 480 },
    ],
  ],
  [[{ name: "browser tests", command: playwright, budgetSeconds: 1200 }]],
];

interface Outcome {
  readonly name: string;
  readonly seconds: number;
  readonly budgetSeconds: number;
  readonly passed: boolean;
}

/** Runs a step, with what it prints kept back until it fails. */
async function run({ name, command, budgetSeconds }: Step): Promise<Outcome> {
  const [program = "", ...flags] = command;
  const begun = performance.now();
  const child = spawn(program, flags, { env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", FORCE_COLOR: "0" } });
  const printed: string[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk) => printed.push(String(chunk)));
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  const seconds = (performance.now() - begun) / 1000;
  if (code !== 0) console.log(`\n${printed.join("")}`);
  return { name, seconds, budgetSeconds, passed: code === 0 && seconds <= budgetSeconds };
}

function line({ name, seconds, budgetSeconds, passed }: Outcome): string {
  const over = seconds > budgetSeconds ? " over its budget" : "";
  return `${passed ? "passed" : "FAILED"}  ${name.padEnd(16)} ${seconds.toFixed(1).padStart(7)} s of ${budgetSeconds} s${over}`;
}

/** Runs a stage's lanes side by side; no step is begun once one has failed. */
async function runStage(lanes: readonly (readonly Step[])[]): Promise<Outcome[]> {
  const outcomes: Outcome[] = [];
  const runLane = async (steps: readonly Step[]) => {
    for (const step of steps) {
      if (outcomes.some(({ passed }) => !passed)) return;
      console.log(`running ${step.name}`);
      outcomes.push(await run(step));
    }
  };
  await Promise.all(lanes.map(runLane));
  return outcomes;
}

async function validate(): Promise<void> {
  installChromium();
  const outcomes: Outcome[] = [];
  for (const stage of STAGES) {
    outcomes.push(...(await runStage(stage)));
    if (outcomes.some(({ passed }) => !passed)) break;
  }
  const ran = new Set(outcomes.map(({ name }) => name));
  const notRun = STAGES.flat(2).filter(({ name }) => !ran.has(name));
  const failed = outcomes.filter(({ passed }) => !passed).length;
  console.log(`\n${outcomes.map(line).join("\n")}`);
  if (notRun.length > 0) console.log(`not run: ${notRun.map(({ name }) => name).join(", ")}`);
  console.log(`\n${outcomes.length - failed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}

await validate();

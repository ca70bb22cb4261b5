import { spawn } from "node:child_process";
import { installChromium } from "./install-chromium";

interface Step {
  readonly name: string;
  readonly command: readonly string[];
  /** Steps that leave behind what this one works on. */
  readonly needs: readonly string[];
  /** Both where the step itself keeps both busy. */
  readonly cores: 1 | 2;
}

const CORES = 2;
/** For all steps together; what still runs then is stopped, and fails. */
const MOST_MINUTES = 24;

const node = (file: string, ...flags: string[]) => [process.execPath, `node_modules/${file}`, ...flags];
const vitest = (project: string) => node("vitest/vitest.mjs", "run", "--project", project);
const eslint = (...flags: string[]) => node("eslint/bin/eslint.js", ...flags);
const prettier = (...flags: string[]) => node("prettier/bin/prettier.cjs", ...flags);
const tsc = (project: string) => node("typescript/bin/tsc", "--noEmit", "-p", project);
// The features' code loads only under this condition, and the browser tests lay their data with it.
const playwright = [
  process.execPath,
  "--conditions",
  "react-server",
  "node_modules/@playwright/test/cli.js",
  "test",
  "--project=desktop",
  "--project=phone",
];

const npm = (script: string) => ["npm", "run", "--silent", script];
const tsx = (file: string) => [process.execPath, "--import", "tsx", file];

const GENERATED = ["generate"];
/** The build leaves the types of the routes behind too. */
const BUILT = ["build"];

/** Of those that may begin the first does: what others wait for, then what takes long. */
const STEPS: readonly Step[] = [
  { name: "generate", command: npm("generate"), needs: [], cores: 1 },
  { name: "build", command: npm("compile"), needs: GENERATED, cores: 1 },
  { name: "database tests", command: vitest("database*"), needs: GENERATED, cores: 1 },
  { name: "first start", command: tsx("test/first-start.ts"), needs: BUILT, cores: 1 },
  { name: "lint", command: eslint("--max-warnings", "0", "."), needs: BUILT, cores: 1 },
  { name: "unit tests", command: vitest("unit"), needs: GENERATED, cores: 1 },
  { name: "types", command: tsc("."), needs: BUILT, cores: 1 },
  { name: "layers", command: vitest("layers"), needs: GENERATED, cores: 1 },
  { name: "format", command: prettier("--check", "."), needs: GENERATED, cores: 1 },
  { name: "unused code", command: node("knip/bin/knip.js"), needs: GENERATED, cores: 1 },
  { name: "engine's types", command: tsc("src/engine/tsconfig.json"), needs: [], cores: 1 },
  { name: "browser tests", command: playwright, needs: BUILT, cores: 2 },
];

interface Outcome {
  readonly name: string;
  readonly seconds: number;
  readonly passed: boolean;
}

/** Runs a step, with what it prints kept back until it fails. */
async function run({ name, command }: Step, signal: AbortSignal): Promise<Outcome> {
  const [program = "", ...flags] = command;
  const begun = performance.now();
  const env = { ...process.env, NEXT_TELEMETRY_DISABLED: "1", FORCE_COLOR: "0" };
  const child = spawn(program, flags, { env, signal });
  const printed: string[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk) => printed.push(String(chunk)));
  const code = await new Promise<number | null>((resolve) => {
    child.once("error", (error) => {
      printed.push(String(error));
      resolve(null);
    });
    child.once("close", resolve);
  });
  const seconds = (performance.now() - begun) / 1000;
  if (code !== 0) console.log(`\n${printed.join("")}`);
  return { name, seconds, passed: code === 0 };
}

function line({ name, seconds, passed }: Outcome): string {
  return `${passed ? "passed" : "FAILED"}  ${name.padEnd(16)} ${seconds.toFixed(1).padStart(7)} s`;
}

/** Runs every step as soon as what it needs has passed and a core is free. */
async function runAll(): Promise<readonly Outcome[]> {
  const signal = AbortSignal.timeout(MOST_MINUTES * 60_000);
  const outcomes: Outcome[] = [];
  const waiting = new Set(STEPS);
  const running = new Map<Step, Promise<void>>();
  const mayBegin = ({ needs, cores }: Step) => {
    const busy = [...running.keys()].reduce((sum, step) => sum + step.cores, 0);
    const passed = new Set(outcomes.map(({ name }) => name));
    return busy + cores <= CORES && needs.every((name) => passed.has(name));
  };
  const begin = (step: Step) => {
    console.log(`running ${step.name}`);
    waiting.delete(step);
    const ended = run(step, signal).then((outcome) => {
      running.delete(step);
      outcomes.push(outcome);
    });
    running.set(step, ended);
  };
  for (;;) {
    const next = signal.aborted ? undefined : [...waiting].find(mayBegin);
    if (next !== undefined) begin(next);
    else if (running.size > 0) await Promise.race(running.values());
    else return outcomes;
  }
}

async function validate(): Promise<void> {
  installChromium();
  const begun = performance.now();
  const outcomes = await runAll();
  const ran = new Set(outcomes.map(({ name }) => name));
  const notRun = STEPS.filter(({ name }) => !ran.has(name));
  const failed = outcomes.filter(({ passed }) => !passed).length;
  console.log(`\n${outcomes.map(line).join("\n")}`);
  if (notRun.length > 0) console.log(`not run: ${notRun.map(({ name }) => name).join(", ")}`);
  const minutes = (performance.now() - begun) / 60_000;
  console.log(`\n${outcomes.length - failed} passed, ${failed} failed, in ${minutes.toFixed(1)} min`);
  process.exitCode = failed === 0 ? 0 : 1;
}

await validate();

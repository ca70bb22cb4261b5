import { readFileSync } from "node:fs";
import { readJson, type Fault } from "@/engine/pattern";
import type { Verb } from "./verb";
import { gapsVerb } from "./verbs/gaps";
import { gradeVerb } from "./verbs/grade";
import { outlineVerb } from "./verbs/outline";
import { placesVerb } from "./verbs/places";
import { predictVerb } from "./verbs/predict";
import { readMeasurementsVerb } from "./verbs/read-measurements";
import { readReportsVerb } from "./verbs/read-reports";
import { reviseVerb } from "./verbs/revise";
import { yarnVerb } from "./verbs/yarn";

const VERBS: readonly Verb[] = [
  ...[predictVerb, gradeVerb, placesVerb, gapsVerb, yarnVerb, reviseVerb, outlineVerb],
  ...[readMeasurementsVerb, readReportsVerb],
];
const BAD_INPUT = 2;
const NO_ANSWER = 3;

// The reader may close the pipe early, as `head` does.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

await main(process.argv.slice(2));

/** `engine VERB FILE`, a file of `-` being standard input: prints JSON, or a line a fault and leaves with 2; leaves with 3 where no answer exists. */
async function main([name, file]: readonly string[]): Promise<void> {
  const verb = VERBS.find((candidate) => candidate.name === name);
  if (verb === undefined) return refuse([{ path: "$", says: usage(name) }]);
  if (file === undefined)
    return refuse([{ path: "$", says: `name the file that ${verb.name} reads, or - for standard input.` }]);
  const text = readText(file);
  if (!text.ok) return refuse(text.faults);
  const json = readJson(text.value);
  if (!json.ok) return refuse(json.faults);
  const result = await verb.run(json.value);
  if (!result.ok) return refuse(result.faults);
  process.stdout.write(`${JSON.stringify(result.output)}\n`);
  if (result.hasNoAnswer) process.exitCode = NO_ANSWER;
}

function usage(name: string | undefined): string {
  const verbs = VERBS.map((verb) => `${verb.name} (${verb.summary})`).join("; ");
  const fault = name === undefined ? "name a verb and a file." : `there is no verb “${name}”.`;
  return `${fault} The verbs are: ${verbs}.`;
}

function readText(file: string): { ok: true; value: string } | { ok: false; faults: readonly Fault[] } {
  try {
    return { ok: true, value: readFileSync(file === "-" ? 0 : file, "utf8") };
  } catch (error) {
    const reason = error instanceof Error && "code" in error ? String(error.code) : "unknown";
    return { ok: false, faults: [{ path: "$", says: `${file} cannot be read (${reason}).` }] };
  }
}

function refuse(faults: readonly Fault[]): void {
  for (const { path, says } of faults) process.stderr.write(`${path}: ${says.replace(/\s+/g, " ")}\n`);
  process.exitCode = BAD_INPUT;
}

import { drawingBench } from "./bench/drawing";
import { editorBench } from "./bench/editor";
import { gapsBench } from "./bench/gaps";
import { gradeBench } from "./bench/grade";
import { pagesBench } from "./bench/pages";
import { placesBench } from "./bench/places";
import { workerBench } from "./bench/worker";

const BENCHES: Readonly<Record<string, (only?: string) => string | Promise<string>>> = {
  drawing: drawingBench,
  editor: editorBench,
  gaps: gapsBench,
  grade: gradeBench,
  pages: pagesBench,
  places: placesBench,
  worker: workerBench,
};

await main(process.argv.slice(2));

/** `bench NAME`: runs one bench and prints its figures; of pages perhaps only some. */
async function main([name, only]: readonly string[]): Promise<void> {
  const bench = name !== undefined && Object.hasOwn(BENCHES, name) ? BENCHES[name] : undefined;
  if (bench === undefined) {
    process.stderr.write(`bench: name one of ${Object.keys(BENCHES).join(", ")}.\n`);
    process.exitCode = 2;
    return;
  }
  process.stdout.write(await bench(only));
}

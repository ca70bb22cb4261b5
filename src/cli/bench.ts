import { gapsBench } from "./bench/gaps";

const BENCHES: Readonly<Record<string, () => string>> = { gaps: gapsBench };

main(process.argv.slice(2));

/** `bench NAME`: runs one bench and prints its figures. */
function main([name]: readonly string[]): void {
  const bench = name !== undefined && Object.hasOwn(BENCHES, name) ? BENCHES[name] : undefined;
  if (bench === undefined) {
    process.stderr.write(`bench: name one of ${Object.keys(BENCHES).join(", ")}.\n`);
    process.exitCode = 2;
    return;
  }
  process.stdout.write(bench());
}

/** Median processor time of a run, ms: ours is one thread, so an idle machine's wall time is about the same. */
export function processorMs(run: () => unknown, runs: number): number {
  const times = Array.from({ length: runs }, () => {
    const start = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return times.toSorted((left, right) => left - right)[Math.floor(runs / 2)] ?? Number.NaN;
}

/** `12.3 ms`, `240 ms`. */
export function shownMs(value: number): string {
  return `${value.toFixed(value < 100 ? 1 : 0)} ms`;
}

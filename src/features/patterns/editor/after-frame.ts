/** A hidden page draws no frames. */
const AT_LATEST_MS = 100;

/**
 * Work that waits until what was typed is drawn, so that it never delays a key.
 *
 * @returns a function that schedules it; scheduled again before it runs, it runs once.
 */
export function afterFrame(work: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const run = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    work();
  };
  return () => {
    if (timer !== undefined) return;
    timer = setTimeout(run, AT_LATEST_MS);
    requestAnimationFrame(() => setTimeout(run));
  };
}

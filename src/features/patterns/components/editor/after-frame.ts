/** A page out of sight draws no frames. */
const AT_LATEST_MS = 100;

/**
 * Work that waits until what was typed is drawn, so that it never holds up a key.
 *
 * @returns asks for it; asked again before it is done, it is done once.
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

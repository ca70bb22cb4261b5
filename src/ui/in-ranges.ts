/**
 * Some of a list in words, neighbours as a range: `XS to M`, `XS, M and 2X`.
 *
 * @param labels all of the list, in its order.
 */
export function inRanges(labels: readonly string[], isChosen: (index: number) => boolean): string {
  const stretches: string[][] = [];
  labels.forEach((label, index) => {
    if (!isChosen(index)) return;
    if (index > 0 && isChosen(index - 1)) stretches.at(-1)?.push(label);
    else stretches.push([label]);
  });
  const words = stretches.flatMap((stretch) => (stretch.length > 2 ? [`${stretch[0]} to ${stretch.at(-1)}`] : stretch));
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

import type { Tester } from "../pattern";

/** −2 far too tight or short … 2 far too loose or long. */
export type FitScale = NonNullable<Tester["fit"]>[number]["scale"];

/** Steps of the fit's scale, from tight to loose. */
export const FIT_SCALE: readonly FitScale[] = [-2, -1, 0, 1, 2];

/**
 * A step of the scale in words, of the garment and not of the body.
 *
 * @param isGirth the place goes round the body: tight or loose; else it may be short or long too.
 */
export function fitScaleLabel(scale: FitScale, { isGirth }: { readonly isGirth: boolean }): string {
  const [less, more] = isGirth ? ["tight", "loose"] : ["tight or short", "loose or long"];
  switch (scale) {
    case -2:
      return `far too ${less}`;
    case -1:
      return `a little ${less}`;
    case 0:
      return "as wished";
    case 1:
      return `a little ${more}`;
    case 2:
      return `far too ${more}`;
  }
}

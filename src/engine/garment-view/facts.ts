import type { Box, Line, Place } from "./line";
import { rightSide } from "./side-chain";
import type { DrawingView, ShownPiece } from "./view";

/** What a piece is like, for those who do not see it. */
interface ViewFact {
  readonly what: string;
  readonly parts: readonly { readonly cm: number; readonly says: string }[];
  readonly note: string | null;
}

/** So much more or less is said of a width apart, cm. */
const TELLING_CM = 0.5;

/** So near is at the same place, cm. */
const NEAR_CM = 0.05;
/** What reaches further down is no neck, but the gap between two legs. */
const DEEPEST_SHARE = 0.8;

/** What a drawing shows, for those who do not see it: of each piece width at the hem and at its widest, heights, and neck. */
export function viewFacts({ shows }: Pick<DrawingView, "shows">): ViewFact[] {
  return shows.map(factsOf);
}

function factsOf({ label, made, outline, box, isTube }: ShownPiece): ViewFact {
  const hemCm = hemWidthCm(outline, box);
  const widestCm = box.rightCm - box.leftCm;
  const underarm = rightSide(outline)?.underarm ?? null;
  const neck = neckOf(outline, box);
  const parts = [{ cm: hemCm, says: "wide at the lower edge" }];
  if (widestCm - hemCm > TELLING_CM) parts.push({ cm: widestCm, says: "at the widest place" });
  parts.push({ cm: box.topCm - box.bottomCm, says: "high" });
  if (underarm !== null) parts.push({ cm: underarm[1] - box.bottomCm, says: "to the underarm" });
  if (neck !== null)
    parts.push({ cm: neck.widthCm, says: "across the neck" }, { cm: neck.depthCm, says: "neck depth" });
  const note = isTube ? "Worked in the round and drawn flat: half of it is seen." : null;
  return { what: made > 1 ? `${label} (${made} made)` : label, parts, note };
}

function hemWidthCm({ stretches }: Line, { bottomCm }: Box): number {
  let [left, right] = [Infinity, -Infinity];
  for (const { to } of stretches)
    if (to[1] < bottomCm + NEAR_CM) {
      left = Math.min(left, to[0]);
      right = Math.max(right, to[0]);
    }
  return Math.max(0, right - left);
}

/** The opening between two shoulders; null where the top is whole. */
function neckOf({ stretches }: Line, { bottomCm, topCm }: Box): { widthCm: number; depthCm: number } | null {
  let [left, right]: [Place | null, Place | null] = [null, null];
  for (const { to } of stretches) {
    if (to[0] < -NEAR_CM && isHigher(to, left)) left = to;
    if (to[0] > NEAR_CM && isHigher(to, right)) right = to;
  }
  if (left === null || right === null) return null;
  let lowestCm = topCm;
  for (const { to } of stretches)
    if (to[0] >= left[0] - NEAR_CM && to[0] <= right[0] + NEAR_CM && to[1] > bottomCm + NEAR_CM)
      lowestCm = Math.min(lowestCm, to[1]);
  const depthCm = topCm - lowestCm;
  return depthCm < TELLING_CM || depthCm > DEEPEST_SHARE * (topCm - bottomCm)
    ? null
    : { widthCm: right[0] - left[0], depthCm };
}

/** Higher, or as high and nearer to the middle. */
function isHigher([x, y]: Place, than: Place | null): boolean {
  return than === null || y > than[1] || (y === than[1] && Math.abs(x) < Math.abs(than[0]));
}

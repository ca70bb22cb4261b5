/**
 * The coordinates in which the rows of a part are placed, cm. Parts that were started apart, such as two shoulders worked from
 * the top, have a frame each, until they are joined and are placed in a common one.
 */
export interface Frame {
  /** Where its origin lies in another; null as long as it is in none. */
  in: { readonly frame: Frame; readonly xCm: number; readonly yCm: number } | null;
}

/** The outermost frame about one, and where the origin of this one lies in it, cm. */
export function placeOf(frame: Frame): { readonly root: Frame; readonly xCm: number; readonly yCm: number } {
  if (frame.in === null) return { root: frame, xCm: 0, yCm: 0 };
  const path: Frame[] = [];
  let root: Frame = frame;
  for (let above: Frame["in"] = frame.in; above !== null; above = root.in) {
    path.push(root);
    root = above.frame;
  }
  let place = { xCm: 0, yCm: 0 };
  for (const inner of path.toReversed()) {
    place = { xCm: place.xCm + (inner.in?.xCm ?? 0), yCm: place.yCm + (inner.in?.yCm ?? 0) };
    inner.in = { frame: root, ...place };
  }
  return { root, ...place };
}

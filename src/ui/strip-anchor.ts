/** The side of its position on which a text is, so that it stays on the strip. */
export function stripAnchor(percent: number): "start" | "middle" | "end" {
  if (percent < 22) return "start";
  return percent > 78 ? "end" : "middle";
}

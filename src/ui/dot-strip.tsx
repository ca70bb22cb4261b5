import { dotLanes } from "./dot-lanes";
import { StripDots, type DotMark } from "./strip-dots";
import { LABELS, stripScale, ValueStrip, type StripFrame } from "./value-strip";

interface StripDot {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly mark: DotMark;
}

interface DotStripProps extends StripFrame {
  readonly dots: readonly StripDot[];
}

const LANE = 11;
const TALLEST = 150;
/** Dots nearer than this on the scale stand above each other, percent of the width. */
const APART = 3.2;
/** More dots than this would make the way through them by keyboard too long; the table beside names them. */
const MOST_STOPS = 40;

/** Single values on a line, the alike ones above each other, against a reference and about their middle. */
export function DotStrip({ dots, ...frame }: DotStripProps) {
  const held = dots.filter(({ mark }) => mark !== "cross").map(({ value }) => value);
  const scale = stripScale(held, frame);
  const places = dots.map(({ value }) => scale(value));
  const lanes = dotLanes(places, APART);
  const most = Math.max(1, ...lanes.map((lane) => lane + 1));
  const step = Math.min(LANE, TALLEST / most);
  const placed = (base: number) =>
    dots.map(({ key, label, value, mark }, index) => ({
      ...{ key, mark, says: `${label}, ${frame.format(value)}` },
      x: Math.round(100 * (places[index] ?? 0)) / 100,
      y: base - 7 - (lanes[index] ?? 0) * step,
    }));
  return (
    <ValueStrip {...frame} scale={scale} height={most * step + 6}>
      {(base) => <StripDots dots={placed(base)} wordsY={LABELS - 6} areStops={dots.length <= MOST_STOPS} />}
    </ValueStrip>
  );
}

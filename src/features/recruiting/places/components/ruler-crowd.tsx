import type { PersonMark } from "../stored-board";
import { CrowdBars } from "./crowd-bars";
import { MARK_WORDS } from "./person-shape";
import type { RulerBar, RulerLayout } from "./ruler-layout";

interface RulerCrowdProps {
  readonly layout: RulerLayout;
  readonly bars: readonly RulerBar[];
  readonly unit: string;
}

/** Between two bars, percent of the width. */
const GAP = 0.2;
/** Between the highest bar and the sizes, so that the lines between them stay distinct. */
const FAN_PX = 120;
/** From the axis upwards. */
const STACK = ["invited", "placed", "locked", "waiting"] as const satisfies PersonMark[];
const FILLS: Readonly<Record<PersonMark, string>> = {
  invited: "fill-thread",
  placed: "fill-ink",
  locked: "fill-soft",
  waiting: "fill-sheet stroke-line-strong",
};

interface DrawnBar extends RulerBar {
  /** Its left edge and its width, percent of the width. */
  readonly left: number;
  readonly width: number;
  readonly topY: number;
}

/** Too many people for a mark each: bars of how many there are, with a line to each size of the people in a bar. */
export function RulerCrowd({ layout, bars, unit }: RulerCrowdProps) {
  const { drawn, pxAPerson } = drawnBars(layout, bars);
  return (
    <>
      <svg
        viewBox={`0 0 100 ${layout.heightPx}`}
        preserveAspectRatio="none"
        width="100%"
        height={layout.heightPx}
        strokeWidth="1"
      >
        {[true, false].map((isInvited) => (
          <path
            key={String(isInvited)}
            d={linesPath({ layout, drawn, isInvited })}
            vectorEffect="non-scaling-stroke"
            strokeOpacity="0.35"
            className={isInvited ? "stroke-thread" : "stroke-ink"}
          />
        ))}
        {STACK.map((mark) => (
          <path
            key={mark}
            d={barsPath({ layout, drawn, pxAPerson, mark })}
            vectorEffect="non-scaling-stroke"
            className={FILLS[mark]}
          />
        ))}
      </svg>
      <CrowdBars
        axisY={layout.axisY}
        bars={drawn.map((bar) => [bar.left.toFixed(1), bar.width.toFixed(1), bar.topY, barWords(bar, unit)])}
      />
    </>
  );
}

function countOf(groups: RulerBar["groups"], isMeant: (mark: PersonMark) => boolean = () => true): number {
  return groups.reduce((sum, { mark, many }) => sum + (isMeant(mark) ? many : 0), 0);
}

/** The height of one person in a bar, and the baseline of the bars. */
function drawnBars(
  { x, axisY, railY }: RulerLayout,
  bars: readonly RulerBar[],
): { readonly drawn: readonly DrawnBar[]; readonly pxAPerson: number } {
  const most = Math.max(1, ...bars.map(({ groups }) => countOf(groups)));
  const pxAPerson = (axisY - railY - FAN_PX) / most;
  const drawn = bars.map((bar) => ({
    ...bar,
    ...{ left: x(bar.from), width: x(bar.to) - x(bar.from) },
    topY: Math.round(axisY - pxAPerson * countOf(bar.groups)),
  }));
  return { drawn, pxAPerson };
}

interface PathOf {
  readonly layout: RulerLayout;
  readonly drawn: readonly DrawnBar[];
}

function barsPath({
  layout: { axisY },
  drawn,
  pxAPerson,
  mark,
}: PathOf & { readonly pxAPerson: number; readonly mark: PersonMark }): string {
  const below: readonly PersonMark[] = STACK.slice(0, STACK.indexOf(mark));
  return drawn
    .map(({ left, width, groups }) => {
      const many = countOf(groups, (each) => each === mark);
      if (many === 0) return "";
      const under = countOf(groups, (each) => below.includes(each));
      const [from, height] = [axisY - under * pxAPerson, many * pxAPerson];
      const wide = (width - GAP).toFixed(2);
      return `M${left.toFixed(2)} ${from.toFixed(1)}h${wide}v${(-height).toFixed(1)}h-${wide}z`;
    })
    .join("");
}

function linesPath({
  layout: { sizes, x, railY },
  drawn,
  isInvited,
}: PathOf & { readonly isInvited: boolean }): string {
  return drawn
    .flatMap(({ left, width, groups, topY }) => {
      const standing = groups.filter(({ mark }) => (mark === "invited") === isInvited).map(({ size }) => size);
      const from = `M${(left + width / 2).toFixed(1)} ${topY}`;
      return sizes
        .filter(({ id }) => standing.includes(id))
        .map(({ index }) => `${from}L${x(index).toFixed(1)} ${(railY + 5).toFixed(0)}`);
    })
    .join("");
}

/** `96.2 to 97.4 cm: 4 invited, 2 waiting` */
function barWords({ from, to, groups }: RulerBar, unit: string): string {
  const marks = STACK.flatMap((mark) => {
    const many = countOf(groups, (each) => each === mark);
    return many === 0 ? [] : [`${many} ${MARK_WORDS[mark]}`];
  });
  return `${from.toFixed(1)} to ${to.toFixed(1)} ${unit}: ${marks.join(", ")}`;
}

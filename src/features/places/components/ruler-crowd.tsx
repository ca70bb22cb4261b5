import { MARK_WORDS } from "./person-shape";
import type { PersonMark, RulerLayout } from "./ruler-layout";

interface RulerCrowdProps {
  readonly layout: RulerLayout;
  readonly unit: string;
}

const BINS = 60;
const BIN_WIDTH = 100 / BINS;
const GAP = 0.2;
/** Between the highest bar and the sizes, so that the lines between them can be told apart. */
const FAN_PX = 120;
/** From the axis upwards. */
const STACK = ["invited", "placed", "locked", "waiting"] as const satisfies PersonMark[];
const FILLS: Readonly<Record<PersonMark, string>> = {
  invited: "fill-thread",
  placed: "fill-ink",
  locked: "fill-soft",
  waiting: "fill-sheet stroke-line-strong",
};

interface Bin {
  /** Place of its left edge, in percent of the width. */
  readonly left: number;
  readonly people: RulerLayout["people"];
  readonly topY: number;
}

/** Too many people for a head each: bars of how many there are, with a line to each size that some of a bar stand in. */
export function RulerCrowd({ layout, unit }: RulerCrowdProps) {
  const { bins, pxAPerson } = binned(layout);
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
            d={linesPath({ layout, bins, isInvited })}
            vectorEffect="non-scaling-stroke"
            strokeOpacity="0.35"
            className={isInvited ? "stroke-thread" : "stroke-ink"}
          />
        ))}
        {STACK.map((mark) => (
          <path
            key={mark}
            d={barsPath({ layout, bins, pxAPerson, mark })}
            vectorEffect="non-scaling-stroke"
            className={FILLS[mark]}
          />
        ))}
      </svg>
      {bins.map(({ left, people, topY }) => (
        <rect
          key={left}
          x={`${left.toFixed(1)}%`}
          y={topY}
          width={`${BIN_WIDTH.toFixed(1)}%`}
          height={layout.axisY - topY}
          opacity="0"
        >
          <title>{binWords(people, unit)}</title>
        </rect>
      ))}
    </>
  );
}

/** How tall one person is in a bar, and the bars that hold anybody. */
function binned({ people, x, axisY, railY }: RulerLayout): {
  readonly bins: readonly Bin[];
  readonly pxAPerson: number;
} {
  const groups = new Map<number, RulerLayout["people"][number][]>();
  for (const person of people) {
    const bin = Math.min(BINS - 1, Math.floor(x(person.at) / BIN_WIDTH));
    groups.set(bin, [...(groups.get(bin) ?? []), person]);
  }
  const most = Math.max(1, ...[...groups.values()].map(({ length }) => length));
  const pxAPerson = (axisY - railY - FAN_PX) / most;
  const bins = [...groups].map(([bin, inBin]) => {
    return { left: bin * BIN_WIDTH, people: inBin, topY: Math.round(axisY - pxAPerson * inBin.length) };
  });
  return { bins, pxAPerson };
}

interface PathOf {
  readonly layout: RulerLayout;
  readonly bins: readonly Bin[];
}

function barsPath({
  layout: { axisY },
  bins,
  pxAPerson,
  mark,
}: PathOf & { readonly pxAPerson: number; readonly mark: PersonMark }): string {
  const below = STACK.slice(0, STACK.indexOf(mark));
  return bins
    .map(({ left, people }) => {
      const many = people.filter((person) => person.mark === mark).length;
      if (many === 0) return "";
      const under = people.filter((person) => below.some((each) => each === person.mark)).length;
      const [from, height] = [axisY - under * pxAPerson, many * pxAPerson];
      const width = (BIN_WIDTH - GAP).toFixed(2);
      return `M${left.toFixed(2)} ${from.toFixed(1)}h${width}v${(-height).toFixed(1)}h-${width}z`;
    })
    .join("");
}

function linesPath({ layout: { sizes, x, railY }, bins, isInvited }: PathOf & { readonly isInvited: boolean }): string {
  return bins
    .flatMap(({ left, people, topY }) => {
      const standing = people.filter(({ mark }) => (mark === "invited") === isInvited).map(({ size }) => size);
      const from = `M${(left + BIN_WIDTH / 2).toFixed(1)} ${topY}`;
      return sizes
        .filter(({ id }) => standing.includes(id))
        .map(({ at }) => `${from}L${x(at).toFixed(1)} ${(railY + 5).toFixed(0)}`);
    })
    .join("");
}

/** `96.2 to 97.4 cm: 4 invited, 2 waiting` */
function binWords(people: RulerLayout["people"], unit: string): string {
  const lengths = people.map(({ at }) => at);
  const [from, to] = [Math.min(...lengths).toFixed(1), Math.max(...lengths).toFixed(1)];
  const marks = STACK.flatMap((mark) => {
    const many = people.filter((person) => person.mark === mark).length;
    return many === 0 ? [] : [`${many} ${MARK_WORDS[mark]}`];
  });
  return `${from === to ? from : `${from} to ${to}`} ${unit}: ${marks.join(", ")}`;
}

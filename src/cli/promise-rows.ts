import {
  calibrateGrowth,
  calibrateNeeded,
  calibrateTesters,
  calibrateYarn,
  type Design,
  type GrowthScenario,
  type Tally,
  type YarnScenario,
} from "@/engine/calibration";
import { crochetedCardigan, knittedPullover } from "@/engine/simulation";
import { askingTable } from "./asking-rows";
import { earlierTable } from "./earlier-rows";

/** First seed of the printed rows; thresholds were chosen on others (docs/method.md#calibration). */
const SEED = 27_182_818;

interface Row {
  readonly name: string;
  readonly share: number | null;
  readonly of: number;
  /** Null where it is printed for comparison. */
  readonly bar: Bar | null;
}

/** Shares from 0 to 1 between which a promise is kept. */
interface Bar {
  readonly min: number;
  readonly max: number;
}

const ENOUGH: Bar = { min: 0.88, max: 0.92 };

const YARN_SCENARIOS: readonly (YarnScenario & { readonly name: string; readonly bar: Bar })[] = [
  { name: "usual makers, 2–6 weighings a size", weighings: "2–6 a size", makers: "usual", bar: ENOUGH },
  { name: "spreads, shift and ratios drawn, 2–6 a size", weighings: "2–6 a size", makers: "drawn", bar: ENOUGH },
  { name: "all makers 4 % tight, 2–6 a size", weighings: "2–6 a size", makers: "tight", bar: ENOUGH },
  { name: "all makers 4 % loose, 2–6 a size", weighings: "2–6 a size", makers: "loose", bar: ENOUGH },
  {
    ...{ name: "7 in 10 testers without a swatch, 2–6 a size", weighings: "2–6 a size" },
    ...{ makers: "mostly without swatches", bar: { min: 0.88, max: 1 } },
  },
  { name: "drawn, one weighing in all", weighings: "one in all", makers: "drawn", bar: { min: 0.88, max: 1 } },
];

const KEPT: Bar = { min: 0.75, max: 0.85 };
const DESIGNS: readonly (readonly [string, Design])[] = [
  ["2–4 testers a size", "2–4 a size"],
  ["1–2 a size, two sizes empty, 30 % lost", "1–2 a size, two sizes empty, 30 % lost"],
];

interface GrowthRow {
  readonly trial: "cause named" | "off within 1" | "covered";
  readonly says: string;
  readonly bar: Bar | null;
}

const NO_CAUSE: GrowthRow = { trial: "cause named", says: "a cause is named", bar: { min: 0, max: 0.1 } };
const NOT_OFF: GrowthRow = { trial: "off within 1", says: "off among sound cells", bar: { min: 0, max: 0.005 } };
const COVERED: GrowthRow = { trial: "covered", says: "90 % intervals that cover", bar: { min: 0.88, max: 1 } };
const GROWTH = { factor: 1.06, spread: 0.02 };
const OTHERWISE = { share: 1 / 3, spread: 0.05 };

const GROWTH_SCENARIOS: readonly (GrowthScenario & { readonly name: string; readonly rows: readonly GrowthRow[] })[] = [
  {
    ...{ name: "grows 6 %, half counted before", growth: { ...GROWTH, countedBefore: 0.5 } },
    ...{ measured: "working", fault: "nothing", rows: [NO_CAUSE, NOT_OFF] },
  },
  {
    ...{ name: "the same, pattern does not say when it is measured", growth: { ...GROWTH, countedBefore: 0.5 } },
    ...{ measured: "not said", fault: "nothing", rows: [NO_CAUSE, NOT_OFF].map((row) => ({ ...row, bar: null })) },
  },
  {
    ...{ name: "grows 6 %, half counted before, errors drawn", growth: { ...GROWTH, countedBefore: 0.5 } },
    ...{ measured: "working", fault: "drawn", rows: [COVERED, NOT_OFF] },
  },
  {
    ...{ name: "a third blocked otherwise", blockedOtherwise: OTHERWISE },
    ...{ measured: "working", fault: "nothing", rows: [NO_CAUSE, NOT_OFF] },
  },
  {
    ...{ name: "a third blocked otherwise, errors drawn", blockedOtherwise: OTHERWISE },
    ...{ measured: "working", fault: "drawn", rows: [COVERED, NOT_OFF] },
  },
];

/** Tables of promises that the pages make in so many words, by the name that chooses one on the command line. */
export const PROMISES = {
  yarn: (calls: number) =>
    table(
      `New makers for whom the yarn that “9 in 10 have enough” with suffices, over ${calls} simulated calls a row`,
      YARN_SCENARIOS.map(({ name, bar, ...scenario }) => {
        const tally = calibrateYarn({ ...scenario, calls, seed: SEED });
        return rowOf(name, { tally, trial: "enough", bar });
      }),
    ),
  growth: (all: number) => {
    const calls = Math.ceil(all / 2);
    return table(
      `Fabrics that grow when they are blocked, over ${calls} simulated calls a scenario`,
      GROWTH_SCENARIOS.flatMap(({ name, rows, ...scenario }) => {
        const tally = calibrateGrowth({ ...scenario, calls, seed: SEED });
        return rows.map(({ trial, says, bar }) => rowOf(`${name}: ${says}`, { tally, trial, bar }));
      }),
    );
  },
  /** Each call is analysed ten times. */
  asking: (calls: number) => askingTable(Math.ceil(calls / 4), SEED),
  testers: (calls: number) =>
    table(
      `Cells that are settled once as many testers came as it was said to take, over ${calls} simulated calls a row`,
      [
        ...testersRows(calls),
        ...[knittedPullover(), crochetedCardigan()].map((pattern) =>
          rowOf(`before a call, ${pattern.craft}: settled`, {
            tally: calibrateNeeded({ pattern, calls: Math.ceil(calls / 4), seed: SEED }),
            ...{ trial: "settled", bar: KEPT },
          }),
        ),
      ],
    ),
  "earlier-calls": (calls: number) => earlierTable(Math.ceil(calls / 2), SEED),
} as const;

export type PromiseName = keyof typeof PROMISES;

export const PROMISE_NAMES = Object.keys(PROMISES).filter(isPromise);

export function isPromise(name: string): name is PromiseName {
  return Object.hasOwn(PROMISES, name);
}

/** Few cells are told a number, so that the bar is one for both designs together. */
function testersRows(calls: number): Row[] {
  const tallies = DESIGNS.map(([name, design]) => ({ name, tally: calibrateTesters({ design, calls, seed: SEED }) }));
  const of = tallies.reduce((sum, { tally }) => sum + tally.of("settled"), 0);
  const hits = tallies.reduce((sum, { tally }) => sum + tally.hits("settled"), 0);
  return [
    { name: "after a call: settled with that many more", share: of === 0 ? null : hits / of, of, bar: KEPT },
    ...tallies.flatMap(({ name, tally }) => [
      rowOf(`  ${name}`, { tally, trial: "settled", bar: null }),
      rowOf(`  ${name}: open cells with a number`, { tally, trial: "told", bar: null }),
    ]),
  ];
}

function rowOf(
  name: string,
  { tally, trial, bar }: { readonly tally: Tally; readonly trial: string; readonly bar: Bar | null },
): Row {
  return { name, share: tally.share(trial), of: tally.of(trial), bar };
}

function table(heading: string, rows: readonly Row[]): string {
  const width = Math.max(...rows.map(({ name }) => name.length));
  return [`${heading}, first seed ${SEED}.`, "", ...rows.map((row) => rowText(row, width)), ""].join("\n");
}

function rowText({ name, share, of, bar }: Row, width: number): string {
  const percent = `${((share ?? Number.NaN) * 100).toFixed(2)} %`;
  const found = `${name.padEnd(width)}  ${percent.padStart(8)} of ${String(of).padStart(6)}`;
  if (bar === null) return found;
  const isMet = share !== null && share >= bar.min && share <= bar.max;
  return `${found}  ${barText(bar)}  ${isMet ? "met" : "missed"}`;
}

function barText({ min, max }: Bar): string {
  const percent = (share: number) => String(Math.round(share * 1000) / 10);
  if (max === 1) return `at least ${percent(min)} %`;
  if (min === 0) return `at most ${percent(max)} %`;
  return `${percent(min)}–${percent(max)} %`;
}

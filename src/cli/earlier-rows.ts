import { calibrateEarlier, EARLIER_WAYS, type CellSums, type Design, type EarlierWay } from "@/engine/calibration";

type Fifth = Readonly<Record<EarlierWay, CellSums>>;

interface EarlierScenario {
  readonly name: string;
  readonly design: Design;
  readonly betweenSd: number;
  /** Testers who have tested before, with habits of their own. */
  readonly returning?: boolean;
  /** Least share of what being told the call's own spreads gains; null where not even being told the designer's reaches it. */
  readonly leastShare: number | null;
}

const SPARSE: Design = "1–2 a size, two sizes empty, 30 % lost";
const SCENARIOS: readonly EarlierScenario[] = [
  { name: "calls within 15 %, fifth has 2–4 a size", design: "2–4 a size", betweenSd: 0.15, leastShare: 0.6 },
  { name: "calls within 15 %, fifth has 1–2, two empty", design: SPARSE, betweenSd: 0.15, leastShare: 0.6 },
  { name: "calls within 30 %, fifth has 2–4 a size", design: "2–4 a size", betweenSd: 0.3, leastShare: null },
  { name: "calls within 30 %, fifth has 1–2, two empty", design: SPARSE, betweenSd: 0.3, leastShare: null },
  {
    ...{ name: "calls within 15 %, most testers test again, 2–4 a size", design: "2–4 a size", betweenSd: 0.15 },
    ...{ returning: true, leastShare: null },
  },
  {
    ...{ name: "calls within 15 %, most testers test again, 1–2, two empty", design: SPARSE, betweenSd: 0.15 },
    ...{ returning: true, leastShare: null },
  },
];

interface Quantity {
  readonly name: string;
  /** Where being told the call's own spreads changes less, no share of it is printed. */
  readonly leastChange: number;
  readonly of: (calls: readonly Fifth[], way: EarlierWay) => number;
  readonly text: (value: number) => string;
}

const ERROR: Quantity = {
  name: "root mean square error, tolerances",
  leastChange: 0.001,
  of: (calls, way) => Math.sqrt(meanOf(calls, way, "squares")),
  text: (value) => value.toFixed(4),
};
const SETTLED: Quantity = {
  name: "cells settled",
  leastChange: 0.01,
  of: (calls, way) => meanOf(calls, way, "settled"),
  text: percent,
};
const COVERED: Quantity = {
  name: "90 % intervals that cover",
  leastChange: 0.01,
  of: (calls, way) => meanOf(calls, way, "covered"),
  text: percent,
};

/**
 * The table of what four earlier calls of a designer do for the fifth (docs/method.md#what-earlier-calls-teach).
 *
 * @param calls simulated designers a scenario.
 */
export function earlierTable(calls: number, seed: number): string {
  const lines = SCENARIOS.flatMap((scenario) => {
    const found = calibrateEarlier({ ...scenario, calls, seed });
    return [
      scenario.name,
      ...[ERROR, SETTLED].flatMap((quantity) => gainLines(found, quantity, scenario)),
      ...valueLines(found, COVERED),
      "",
    ];
  });
  return [
    `What four earlier calls of a designer do for the fifth, over ${calls} simulated designers a scenario, first seed ${seed}.`,
    "",
    ...lines,
  ].join("\n");
}

function valueLines(calls: readonly Fifth[], { name, of, text }: Quantity): string[] {
  return [`  ${name}`, ...EARLIER_WAYS.map((way) => `    ${way.padEnd(22)} ${text(of(calls, way)).padStart(8)}`)];
}

function gainLines(calls: readonly Fifth[], quantity: Quantity, { leastShare }: EarlierScenario): string[] {
  const told = "told the call’s";
  const change = quantity.of(calls, told) - quantity.of(calls, "alone");
  if (Math.abs(change) < quantity.leastChange)
    return [...valueLines(calls, quantity), "    being told its own spreads changes nothing to speak of"];
  const share = (way: EarlierWay) => (some: readonly Fifth[]) => {
    const alone = quantity.of(some, "alone");
    return (quantity.of(some, way) - alone) / (quantity.of(some, told) - alone);
  };
  const found = share("earlier calls")(calls);
  const bar =
    leastShare === null ? "" : `   at least ${percent(leastShare)}: ${found >= leastShare ? "met" : "missed"}`;
  return [
    ...valueLines(calls, quantity),
    `    share of the gain      ${shareText(calls, share("earlier calls"))}${bar}`,
    `    and testers’ records   ${shareText(calls, share("and testers’ records"))}`,
    `    told the designer’s    ${shareText(calls, share("told the designer’s"))}   the most that earlier calls can teach of spreads`,
  ];
}

/** With its standard error, from leaving out one designer at a time (jackknife; Efron & Tibshirani 1993, 11). */
function shareText(calls: readonly Fifth[], share: (some: readonly Fifth[]) => number): string {
  const without = calls.map((left) => share(calls.filter((call) => call !== left)));
  const mean = without.reduce((sum, value) => sum + value, 0) / without.length;
  const squares = without.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const error = Math.sqrt(((calls.length - 1) / calls.length) * squares);
  return `${percent(share(calls)).padStart(8)} ± ${percent(error)}`;
}

function meanOf(calls: readonly Fifth[], way: EarlierWay, what: Exclude<keyof CellSums, "cells">): number {
  const total = (key: keyof CellSums) => calls.reduce((sum, call) => sum + call[way][key], 0);
  return total(what) / total("cells");
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

import { gaps, isSettled, TAPE_SHARE, type GapsOutput, type NextQuestion } from "../gaps";
import type { CallDocument, PatternDocument, Reading } from "../pattern";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { readAgain } from "../simulation";
import { plantedCall, type Design, type PlantedCall, type Trouble } from "./planted-call";
import { withMoreTesters, type Garments } from "./with-more-testers";

/** So many questions are asked, one after the other, each answered before the next is chosen. */
const QUESTIONS = 5;
/** Sets of random questions beside them, whose mean is taken. */
const RANDOM_SETS = 3;

/** Cells of all calls, on average a call. */
export interface AskedCells {
  /** Whose verdict is open before anything is asked. */
  readonly open: number;
  /** How many more are settled after the questions that were told, and after as many random ones of the same kinds. */
  readonly settled: number;
  readonly settledAtRandom: number;
  /** What the questions were expected to settle, each when it was asked. */
  readonly expected: number;
  /** Standard error of the ratio of the two, by the spread between calls. */
  readonly ratioError: number;
}

/**
 * How many cells are settled by asking what is told to be asked next, five times over, and by five random questions of the same
 * kinds. Edgings are left out: a call has no place for what was measured of one.
 *
 * @see docs/method.md#what-to-ask-next.
 */
export function calibrateAsking(given: {
  readonly patterns: readonly PatternDocument[];
  readonly design: Design;
  readonly trouble?: Trouble;
  readonly calls: number;
  readonly seed: number;
}): AskedCells {
  const counts = Array.from({ length: given.calls }, (_, call) => {
    const pattern = given.patterns[call % given.patterns.length];
    if (pattern === undefined) throw new RangeError("there is no pattern to simulate");
    const seed = given.seed + 1000 * call;
    return askedCells(plantedCall({ ...given, pattern, fault: "drawn", entryErrorShare: 0, seed }), seed);
  });
  const mean = (value: (count: (typeof counts)[number]) => number) =>
    counts.reduce((sum, count) => sum + value(count), 0) / counts.length;
  const [settled, settledAtRandom] = [mean((count) => count.settled), mean((count) => count.settledAtRandom)];
  const ratio = settled / settledAtRandom;
  const squares = mean((count) => (count.settled - ratio * count.settledAtRandom) ** 2);
  return {
    open: mean((count) => count.open),
    settled,
    settledAtRandom,
    expected: mean((count) => count.expected),
    ratioError: Math.sqrt(squares / counts.length) / settledAtRandom,
  };
}

function askedCells(planted: PlantedCall, seed: number) {
  const before = gaps(planted.call);
  const settledBefore = settledCells(before);
  const actions: NextQuestion["action"][] = [];
  let asked: Garments = planted;
  let { askNext } = before;
  let expected = 0;
  for (let number = 1; number <= QUESTIONS; number += 1) {
    const question = askNext.find(({ action }) => action !== "input");
    if (question === undefined) break;
    actions.push(question.action);
    expected += question.settles;
    asked = answered(asked, question, { planted, seed: seed + 10 * number });
    ({ askNext } = gaps(asked.call));
  }
  const atRandom = Array.from({ length: actions.length === 0 ? 0 : RANDOM_SETS }, (_, set) =>
    settledCells(gaps(askedAtRandom(planted, actions, seed + 100 * (set + 1)).call)),
  );
  return {
    open: before.cells.length - settledBefore,
    settled: settledCells(gaps(asked.call)) - settledBefore,
    settledAtRandom: atRandom.reduce((sum, settled) => sum + (settled - settledBefore) / RANDOM_SETS, 0),
    expected,
  };
}

function askedAtRandom(planted: PlantedCall, actions: readonly NextQuestion["action"][], seed: number): Garments {
  const random = seededRandom(seed);
  let asked: Garments = planted;
  actions.forEach((action, number) => {
    const question = randomQuestion(asked.call, action, random);
    if (question !== null) asked = answered(asked, question, { planted, seed: seed + 10 * number + 1 });
  });
  return asked;
}

function settledCells({ cells }: GapsOutput): number {
  return cells.filter(({ verdict }) => isSettled(verdict)).length;
}

type Question = Pick<NextQuestion, "action" | "tester" | "measurement" | "size">;

function answered(
  garments: Garments,
  question: Question,
  { planted, seed }: { planted: PlantedCall; seed: number },
): Garments {
  const { call, lengths } = garments;
  if (question.action === "tester" && question.size !== undefined) {
    const { size } = question;
    return withMoreTesters(garments, planted.choices, { size, testers: 1, seed, named: `more-${seed}` });
  }
  const length = lengths.find(
    ({ tester, measurement }) => tester === question.tester && measurement === question.measurement,
  );
  const measurement = call.pattern.measurements.find(({ id }) => id === question.measurement);
  if (length === undefined || measurement === undefined)
    throw new RangeError("nobody has the garment that is asked of");
  const { habits } = planted.choices;
  const isFirst = question.action === "measure";
  const reading = readAgain(length, { measurement, habits, tapeShare: TAPE_SHARE, isFirst }, seededRandom(seed));
  return { call: withReading(call, length.tester, reading), lengths };
}

function withReading(call: CallDocument, id: string, reading: Reading): CallDocument {
  const testers = call.testers.map((tester) =>
    tester.id === id ? { ...tester, readings: [...tester.readings, reading] } : tester,
  );
  return { ...call, testers };
}

/** One of all questions of the kind, each with the same chance; null where there is none. */
function randomQuestion(
  { pattern, testers }: CallDocument,
  action: NextQuestion["action"],
  random: SeededRandom,
): Question | null {
  const all: Question[] =
    action === "tester"
      ? pattern.sizes.map(({ id }) => ({ action, size: id }))
      : testers.flatMap((tester) =>
          pattern.measurements
            .filter(
              ({ id }) => tester.readings.some(({ measurement }) => measurement === id) === (action !== "measure"),
            )
            .map(({ id }) => ({ action, tester: tester.id, measurement: id })),
        );
  return all[random.below(all.length)] ?? null;
}

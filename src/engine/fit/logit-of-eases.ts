import { AREA_SLOPE_PRIOR, LEVEL_SD, PERSON_PRIOR, PREFERS_PRIOR, SLOPE_PRIOR, THRESHOLD_PRIORS } from "./fit-priors";
import type { LogitModel, NormalPrior, ScaleAnswers } from "./cumulative-logit";
import type { RatedEase } from "./rated-eases";

const STEPS = 5;

interface Columns {
  readonly areas: number;
  readonly levels: readonly ((answer: RatedEase) => boolean)[];
}

/** The answers as a cumulative logit: slopes on ease, common and by area, how testers like it, and levels. */
export function logitOf(rated: readonly RatedEase[], { areas, levels }: Columns) {
  const areaSlopes = areas > 1 ? areas : 0;
  const columns = 1 + areaSlopes + 1 + levels.length;
  const values = new Float64Array(rated.length * columns);
  rated.forEach((answer, i) => {
    values[i * columns] = answer.x;
    if (areaSlopes > 0) values[i * columns + 1 + answer.area] = answer.x;
    values[i * columns + 1 + areaSlopes] = answer.prefers;
    levels.forEach((isIn, level) => {
      values[i * columns + 2 + areaSlopes + level] = isIn(answer) ? 1 : 0;
    });
  });
  const given: ScaleAnswers = {
    steps: STEPS,
    answers: Int32Array.from(rated, ({ scale }) => scale + 2),
    columns: { rows: rated.length, columns, values },
    starts: startsOf(rated),
  };
  const hasPersons = given.starts.length - 1 < rated.length;
  const priors: NormalPrior[] = [
    ...[...THRESHOLD_PRIORS, SLOPE_PRIOR],
    ...Array.from({ length: areaSlopes }, () => AREA_SLOPE_PRIOR),
    PREFERS_PRIOR,
    ...levels.map(() => ({ mean: 0, sd: LEVEL_SD })),
    ...(hasPersons ? [PERSON_PRIOR] : []),
  ];
  const model: LogitModel = { thresholds: "mirrored", hasPersons, priors };
  return {
    ...{ given, model, start: Float64Array.from(priors, ({ mean }) => mean) },
    slopeColumns: (area: number) => (areaSlopes > 0 ? [0, 1 + area] : [0]),
  };
}

/** Answers of one tester stand side by side. */
function startsOf(rated: readonly RatedEase[]): Int32Array {
  const starts = rated.flatMap(({ tester }, index) => (rated[index - 1]?.tester === tester ? [] : [index]));
  return Int32Array.from([...starts, rated.length]);
}

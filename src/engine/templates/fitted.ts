import { craftSteps, n, nearest, spread, targetOf, work, type Doing, type TemplatePlan } from "./plan";
import {
  BODY_PIECES,
  BODY_SEAMS,
  FRONT_AND_BACK,
  neckCounts,
  neckMeasurements,
  neckNumbers,
  neckSums,
  upperSteps,
  type NeckShape,
} from "./neck-and-sides";
import {
  bodyMultiple,
  bustMeasurements,
  flatSleeve,
  LENGTH_COUNTS,
  lengthMeasurements,
  lengthNumbers,
  rowsOf,
  SLEEVE_COUNTS,
  SLEEVE_PIECE,
  SLEEVE_SEAM,
  SLEEVE_SUM,
  sleeveMeasurements,
  sleeveNumbers,
  stitches,
  type Work,
} from "./shared-parts";

/** Binding off at both armholes takes two rows. */
const BIND_OFF_ROWS = 2;
/** Of the armhole. Common practice, no source. */
const CAP_HEIGHT_SHARE = 0.7;
/** Of the cap’s stitches above the underarm, decreased at each side. Common practice, no source. */
const CAP_SLOPE_SHARE = 0.36;

/** Front and back with shaped armholes, and sleeves with a cap where they have any. */
export function fitted(given: Work, shape: NeckShape): TemplatePlan {
  const { request, rowCm } = given;
  const { craft, template } = request;
  const hasSleeves = template === "set-in";
  const { begin, finish } = craftSteps(craft);
  const of = bodyMultiple(request);
  const { numbers, every } = fittedNumbers(given, shape, hasSleeves);
  const middle: Readonly<Record<string, number>> = numbers[Math.floor(numbers.length / 2)] ?? {};
  const toUnderarm = (middle["edging-rows"] ?? 0) + (middle["body-rows"] ?? 0);
  const share = toUnderarm / (toUnderarm + BIND_OFF_ROWS + (middle["armhole-rows"] ?? 0));
  const sleeveRows = (middle["edging-rows"] ?? 0) + (middle["sleeve-rows"] ?? 0);
  const half = (id: (typeof FRONT_AND_BACK)[number]): Doing[] => [
    begin(n("width")),
    { ...work(n("edging-rows")), id: `${id}-edging` },
    { ...work(n("body-rows")), id: `${id}-body` },
    { do: "bind-off", at: "both", each: n("underarm") },
    work(n("armhole-times", every), { ...spread("decrease", "both", "armhole-times"), every }),
    work(n(`${id}-rows`)),
  ];
  return {
    inRounds: false,
    counts: {
      width: stitches("Stitches of front and back", { repeat: { of, plus: 0 } }),
      ...LENGTH_COUNTS,
      underarm: stitches("Underarm: stitches at each side", { isRest: true }),
      "armhole-times": stitches("Armhole: times decreased", { least: 0, isShaping: true }),
      "armhole-rows": rowsOf("Armhole rows above the underarm"),
      "front-rows": rowsOf("Front: even rows to the neck", { isRest: true }),
      "back-rows": rowsOf("Back: even rows to the neck", { isRest: true }),
      neck: stitches("Neck stitches", { repeat: { of: 2, plus: 0 } }),
      shoulder: stitches("Shoulder stitches"),
      ...neckCounts(),
      ...(hasSleeves
        ? {
            ...SLEEVE_COUNTS,
            "cap-rows": rowsOf("Sleeve cap rows"),
            "cap-times": stitches("Sleeve cap: times decreased", { isShaping: true }),
            "cap-top": stitches("Sleeve cap: stitches at the top", { isRest: true }),
          }
        : {}),
    },
    sums: [
      ["width", { underarm: 2, "armhole-times": 2, shoulder: 2, neck: 1 }],
      ...neckSums(),
      ...FRONT_AND_BACK.map(
        (id) => ["armhole-rows", { "armhole-times": every, [`${id}-rows`]: 1, [`${id}-neck-rows`]: 1 }] as const,
      ),
      ...(hasSleeves ? [SLEEVE_SUM, ["upper", { underarm: 2, "cap-times": 2, "cap-top": 1 }] as const] : []),
    ],
    numbers,
    allowances: [
      { id: "underarm-rows", label: "Two rows in which the underarms are bound off", cm: BIND_OFF_ROWS * rowCm },
    ],
    pieces: [...BODY_PIECES, ...(hasSleeves ? [SLEEVE_PIECE] : [])],
    steps: [
      ...FRONT_AND_BACK.flatMap((id) => upperSteps(craft, id, half(id))),
      ...(hasSleeves
        ? [
            [
              "sleeve",
              ...flatSleeve(craft),
              { do: "bind-off", at: "both", each: n("underarm") },
              work(n("cap-rows"), spread("decrease", "both", "cap-times")),
              finish("sleeve-top"),
            ] as const,
          ]
        : []),
    ],
    seams: [...BODY_SEAMS, ...(hasSleeves ? [SLEEVE_SEAM] : [])],
    measurements: fittedMeasurements(given, { numbers, share, hasSleeves, sleeveRows }),
  };
}

function fittedNumbers(given: Work, shape: NeckShape, hasSleeves: boolean) {
  const { request, figures, stitchCm, rowCm } = given;
  const of = bodyMultiple(request);
  const sizes = figures.map((figure) => {
    const width = nearest(figure.bust / 2, stitchCm, { of });
    const neck = nearest(figure.neckWidth, stitchCm, { of: 2 });
    const shoulder = Math.max(Math.min(nearest(figure.shoulder, stitchCm), (width - neck) / 2 - 2), 1);
    const armholeRows = nearest(figure.armhole - BIND_OFF_ROWS * rowCm, rowCm, { least: 4 });
    const necks = neckNumbers(given, { neck, shoulder, shape, armholeRows });
    const toNeck = armholeRows - Math.max(necks["front-neck-rows"] ?? 0, necks["back-neck-rows"] ?? 0);
    return { figure, width, neck, shoulder, armholeRows, necks, toNeck, rest: (width - neck) / 2 - shoulder };
  });
  const every = sizes.every(({ rest, toNeck }) => 2 * Math.floor(rest / 2) < toNeck) ? 2 : 1;
  const numbers = sizes.map(({ figure, width, neck, shoulder, armholeRows, necks, toNeck, rest }) => {
    const times = Math.max(Math.min(Math.floor(rest / 2), toNeck - 1), 0);
    const underarm = rest - times;
    const left = armholeRows - every * times;
    return {
      ...{ width, neck, shoulder, underarm, "armhole-times": times, "armhole-rows": armholeRows },
      ...{ ...necks, ...lengthNumbers(given) },
      "front-rows": left - (necks["front-neck-rows"] ?? 0),
      "back-rows": left - (necks["back-neck-rows"] ?? 0),
      ...(hasSleeves ? capNumbers(given, figure, underarm) : {}),
    };
  });
  return { numbers, every };
}

function capNumbers(given: Work, figure: Work["figures"][number], underarm: number) {
  const { numbers } = sleeveNumbers(given, figure);
  const rows = nearest(figure.armhole * CAP_HEIGHT_SHARE, given.rowCm, { least: 2 });
  const above = numbers.upper - 2 * underarm;
  const times = Math.min(Math.floor(above * CAP_SLOPE_SHARE), rows);
  return { ...numbers, "cap-rows": rows, "cap-times": times, "cap-top": above - 2 * times };
}

interface Measured {
  readonly numbers: TemplatePlan["numbers"];
  readonly share: number;
  readonly hasSleeves: boolean;
  readonly sleeveRows: number;
}

function fittedMeasurements(given: Work, { numbers, share, hasSleeves, sleeveRows }: Measured) {
  const { request, figures } = given;
  const middle = numbers[Math.floor(numbers.length / 2)] ?? {};
  const topShare = sleeveRows / (sleeveRows + BIND_OFF_ROWS + (middle["cap-rows"] ?? 0));
  const measurements: TemplatePlan["measurements"] = [
    ...bustMeasurements(given, [[2, "width"]], { piece: "front", from: [0, 0.9 * share], to: [1, 0.9 * share] }),
    ...lengthMeasurements(given, { piece: "front", from: [0.06, 0], to: [0.06, share] }),
    {
      ...{ id: "armhole", label: "Armhole depth", how: "From the underarm straight up to the shoulder’s level." },
      ...{ tolerance: "length", terms: [[1, "armhole-rows"]], allowance: "underarm-rows" },
      target: targetOf(request, (index) => figures[index]?.armhole ?? 0),
    },
    {
      ...{ id: "shoulder", label: "Shoulder", how: "Along the seam, from the neck to the armhole." },
      ...{ tolerance: "shoulder", terms: [[1, "shoulder"]] },
      on: { from: ["front-left-shoulder", 0], to: ["front-left-shoulder", 1] },
      target: targetOf(request, (index) => figures[index]?.shoulder ?? 0),
    },
    ...neckMeasurements(given, numbers),
  ];
  if (!hasSleeves) return measurements;
  return [
    ...measurements,
    ...sleeveMeasurements(given, { topShare, upper: [[1, "upper"]] }),
    {
      ...{ id: "cap", label: "Sleeve cap height", how: "From the line between the underarms up to the top." },
      ...{ tolerance: "length" as const, terms: [[1, "cap-rows"]] as const, allowance: "underarm-rows" },
      target: targetOf(request, (index) => (numbers[index]?.["cap-rows"] ?? 0) * given.rowCm + 2 * given.rowCm),
    },
  ];
}

import { craftSteps, n, nearest, targetOf, work, type Doing, type TemplatePlan } from "./plan";
import {
  BODY_PIECES,
  BODY_SEAMS,
  FRONT_AND_BACK,
  neckCounts,
  neckMeasurements,
  neckNumbers,
  neckSums,
  upperSteps,
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

/** Common practice, no source. */
const NECK = { frontCm: 8, backCm: 2, frontSlope: 0.5, backSlope: 0.2 } as const;

/** Front and back straight to the shoulder, with a round neck; the sleeves end straight and are sewn in. */
export function dropShoulder(given: Work): TemplatePlan {
  const { request, figures, stitchCm, rowCm } = given;
  const { craft } = request;
  const { begin, finish } = craftSteps(craft);
  const of = bodyMultiple(request);
  const numbers = figures.map((figure) => {
    const width = nearest(figure.bust / 2, stitchCm, { of });
    const neck = nearest(figure.neckWidth, stitchCm, { of: 2 });
    const shoulder = (width - neck) / 2;
    const armholeRows = nearest(figure.armhole, rowCm);
    const necks = neckNumbers(given, { neck, shoulder, shape: NECK, armholeRows });
    return {
      ...{ width, neck, shoulder, "armhole-rows": armholeRows, ...necks, ...lengthNumbers(given) },
      ...{ "front-rows": armholeRows - (necks["front-neck-rows"] ?? 0) },
      ...{ "back-rows": armholeRows - (necks["back-neck-rows"] ?? 0) },
      ...sleeveNumbers(given, figure).numbers,
    };
  });
  const middle = numbers[Math.floor(numbers.length / 2)];
  const toUnderarm = (middle?.["edging-rows"] ?? 0) + (middle?.["body-rows"] ?? 0);
  const share = toUnderarm / (toUnderarm + (middle?.["armhole-rows"] ?? 0));
  const half = (id: (typeof FRONT_AND_BACK)[number]): Doing[] => [
    begin(n("width")),
    { ...work(n("edging-rows")), id: `${id}-edging` },
    { ...work(n("body-rows")), id: `${id}-body` },
    work(n(`${id}-rows`)),
  ];
  return {
    inRounds: false,
    counts: {
      width: stitches("Stitches of front and back", { repeat: { of, plus: 0 } }),
      ...LENGTH_COUNTS,
      "armhole-rows": rowsOf("Rows from the underarm to the shoulder"),
      "front-rows": rowsOf("Front: rows from the underarm to the neck", { isRest: true }),
      "back-rows": rowsOf("Back: rows from the underarm to the neck", { isRest: true }),
      neck: stitches("Neck stitches", { repeat: { of: 2, plus: 0 } }),
      shoulder: stitches("Shoulder stitches", { isRest: true }),
      ...neckCounts(),
      ...SLEEVE_COUNTS,
    },
    sums: [
      ["width", { neck: 1, shoulder: 2 }],
      ...neckSums(),
      ...FRONT_AND_BACK.map((id) => ["armhole-rows", { [`${id}-rows`]: 1, [`${id}-neck-rows`]: 1 }] as const),
      SLEEVE_SUM,
    ],
    numbers,
    pieces: [...BODY_PIECES, SLEEVE_PIECE],
    steps: [
      ...FRONT_AND_BACK.flatMap((id) => upperSteps(craft, id, half(id))),
      ["sleeve", ...flatSleeve(craft), finish("sleeve-top")],
    ],
    seams: [...BODY_SEAMS, SLEEVE_SEAM],
    measurements: [
      ...bustMeasurements(given, [[2, "width"]], { piece: "front", from: [0, share], to: [1, share] }),
      ...lengthMeasurements(given, { piece: "front", from: [0.1, 0], to: [0.1, share] }),
      {
        ...{ id: "armhole", label: "Armhole depth", how: "From the underarm straight up to the shoulder." },
        ...{ tolerance: "length", terms: [[1, "armhole-rows"]] },
        on: { piece: "front", from: [0.1, share], to: [0.1, 1] },
        target: targetOf(request, (index) => figures[index]?.armhole ?? 0),
      },
      ...neckMeasurements(given, numbers),
      ...sleeveMeasurements(given, { topShare: 1, upper: [[1, "upper"]] }),
    ],
  };
}

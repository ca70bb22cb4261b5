import {
  body,
  bodyRows,
  CUFF_RIB_CM,
  frontRows,
  frontSide,
  HEM_RIB_CM,
  neck,
  NECK_BAND_CM,
  neckCentre,
  neckRows,
  neckSteps,
  ROWS_PER_CM,
  shoulder,
  SIZES,
  sleeveCuff,
  sleeveRows,
  sleeveSteps,
  sleeveTop,
  STITCHES_PER_CM,
  yoke,
  yokeRows,
} from "./saltmarsh-numbers";

type DemoSize = (typeof SIZES)[number];

/** One number a size, as the trade writes them: `176 (192, 212)`. */
function list(value: (size: DemoSize) => number | string): string {
  const [first, ...others] = SIZES.map(value);
  return `${first} (${others.join(", ")})`;
}

/** How the demonstration's tee would be made; invented, and knitted by nobody. */
export const saltmarshInstructions = `SALTMARSH TEE

This pattern is invented for the demonstration. Its numbers add up, but nobody has knitted it.

Sizes: ${list(({ label }) => label)}. Where one number stands, it is for all sizes.

# Before you begin
Gauge: ${STITCHES_PER_CM * 10} stitches and ${ROWS_PER_CM * 10} rows to 10 cm in stocking stitch, washed and dried, on 4 mm needles.
Knit your swatch as you will knit the tee, wash it, and count when it is dry.

# Body
The body is knitted in the round from the hem to the underarms.
- Cast on ${list(body)} stitches, join, and place a marker; place another after ${list(yoke)} stitches.
- Work knit 2, purl 2 rib until it measures ${HEM_RIB_CM} cm.
- Change to stocking stitch and knit ${list(bodyRows)} rounds.
- Part the work: the first ${list(yoke)} stitches are the back, the others wait for the front.

# Back
- Work ${list(yokeRows)} rows flat in stocking stitch.
- Bind off ${list(shoulder)} stitches for a shoulder, put the ${list(neck)} neck stitches on a thread, and bind off the ${list(shoulder)} stitches that are left.

# Front
- Take up the ${list(yoke)} stitches that wait and work ${list(frontRows)} rows flat.
- Next row: knit ${list(frontSide)}, put ${list(neckCentre)} stitches at the centre on a thread, knit to the end. Each side is now worked alone.
- Take off one stitch at the neck edge in every second row, ${list(neckSteps)} times in all; ${list(shoulder)} stitches are left.
- Work on until the neck is ${neckRows} rows deep, bind off, and work the other side the same way in mirror image.

# Sleeves (make 2)
Sew the shoulders first. Each seam takes a little of the length, which the numbers allow for.
- Pick up ${list(sleeveTop)} stitches along the armhole and work flat in stocking stitch.
- Take off one stitch at both edges, ${list(sleeveSteps)} times spread evenly over ${sleeveRows} rows; ${list(sleeveCuff)} stitches are left.
- Work knit 1, purl 1 rib until it measures ${CUFF_RIB_CM} cm, and bind off loosely.

# Neck band and finishing
- Pick up around the neck, all waiting stitches among them, and work knit 1, purl 1 rib until it measures ${NECK_BAND_CM} cm.
- Sew the sleeves, weave in the ends, wash the tee and dry it flat.
- Measure it when it is dry, and not before.
`;

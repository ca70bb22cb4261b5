import { fromCm, type LengthUnit } from "@/engine/units";

const SIXTEENTHS = 16;
const CLOSE = 1e-4;

/**
 * A length that someone once typed, as close to the text as its centimetres allow: `38.25`, `12 3/8`.
 *
 * @returns the number without its unit: hundredths at most, in inches a fraction down to sixteenths where it is one.
 */
export function formatExactLength(cm: number, unit: LengthUnit): string {
  const value = fromCm(cm, unit);
  const sixteenths = Math.round(Math.abs(value) * SIXTEENTHS);
  const isFraction = unit === "in" && Math.abs(Math.abs(value) * SIXTEENTHS - sixteenths) < CLOSE;
  const text = isFraction ? asFraction(sixteenths) : String(Number(Math.abs(value).toFixed(2)));
  return value < 0 && text !== "0" ? `−${text}` : text;
}

function asFraction(sixteenths: number): string {
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  let over = sixteenths % SIXTEENTHS;
  if (over === 0) return String(whole);
  let under = SIXTEENTHS;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

/** `adds 1 cm`, `takes 2 cm`: the sign of an edging or seam is always a word. */
export function allowanceWords(cm: number, unit: LengthUnit): string {
  const length = `${formatExactLength(Math.abs(cm), unit)} ${unit}`;
  if (cm === 0) return "adds nothing";
  return cm > 0 ? `adds ${length}` : `takes ${length}`;
}

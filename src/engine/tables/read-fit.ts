import type { Tester } from "../pattern";

type FitScale = NonNullable<Tester["fit"]>[number]["scale"];

const LESS = /\btight|\bsnug|\bsmall|\bshort|\bnarrow|\bclose\b|\beng\b|\bknapp|\bkurz|\bserr|\bpetit/i;
const MORE =
  /\bloose|\bbig\b|\blarge|\blong\b|\bwide\b|\broomy|\bbaggy|\boversize|\bweit\b|\bgross\b|\blang\b|\blocker/i;
const A_LITTLE =
  /\ba (?:little|bit|touch|tad)\b|\bslight|\bsomewhat|\bbit\b|\brather|\betwas\b|\bleicht|\bun peu\b|-ish\b/i;
const FAR = /\bfar\b|\bmuch\b|\bway\b|\bvery\b|\btoo\b|\bviel\b|\bzu\b|\btrop\b/i;
const RIGHT =
  /\bright\b|\bperfect|\bgood\b|\bgreat\b|\bfine\b|\bok(?:ay)?\b|\bas (?:expected|wished|intended|planned)\b|\btrue to size\b|\bwell\b|\bideal|\bpasst\b|\bgut\b|\bgenau\b|\bparfait|^yes\b|^exact/i;

/**
 * How the garment fits, −2 far too tight or short to 2 far too loose or long; null where an answer says neither.
 *
 * @param isOneToFive answers in numbers run from 1 to 5, with 3 as wished; else from −2 to 2.
 */
export function readFit(text: string, isOneToFive: boolean): FitScale | null {
  const number = /^([+−-]?[0-5])(?:\s*[-–=:(].*)?$/.exec(text.trim())?.[1]?.replace("−", "-");
  if (number !== undefined) return scaleOf(Number(number) - (isOneToFive ? 3 : 0));
  const little = A_LITTLE.test(text);
  const [less, more] = [LESS.test(text), MORE.test(text)];
  if (less !== more) {
    const size = little || !FAR.test(text) ? 1 : 2;
    return scaleOf(less ? -size : size);
  }
  return !less && RIGHT.test(text) ? 0 : null;
}

function scaleOf(value: number): FitScale | null {
  switch (value) {
    case -2:
    case -1:
    case 0:
    case 1:
    case 2:
      return value;
    default:
      return null;
  }
}

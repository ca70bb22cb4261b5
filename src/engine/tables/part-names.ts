import { distinctiveWords, normalised } from "./label-text";

/** A phrase that people use for a part of a garment, and the parts that it means; longer phrases stand first. */
const PHRASES: readonly (readonly [RegExp, string])[] = [
  [/\b(?:under ?arm|arm ?pit)\b.{0,16}\b(?:cuff|wrist|end of (?:the )?sleeve)\b/g, " sleeve length "],
  [/\b(?:cuff|wrist)\b.{0,16}\b(?:under ?arm|arm ?pit)\b/g, " sleeve length "],
  [/\b(?:under ?arm|arm ?pit|arm ?hole)\b.{0,16}\b(?:hem|bottom|lower edge|cast ?-?on)\b/g, " underarm length "],
  [
    /\b(?:hem|bottom|lower edge|cast ?-?on(?: edge)?)\b.{0,16}\b(?:under ?arm|arm ?pit|arm ?hole)\b/g,
    " underarm length ",
  ],
  [/\b(?:shoulder|hps|neck)\b.{0,16}\b(?:hem|bottom|lower edge)\b/g, " length "],
  [/\b(?:hem|bottom|lower edge)\b.{0,16}\b(?:shoulder|hps|neck)\b/g, " length "],
  [/\bside seam\b|\bbody to under ?arm\b/g, " underarm length "],
  [
    /\b(?:sleeve|arm) seam\b|\barmellange\b|\barm length\b|\blongueur de manche\b|\blargo de manga\b/g,
    " sleeve length ",
  ],
  [
    /\bbiceps?\b|\bupper (?:arm|sleeve)s?\b|\bsleeve (?:top|width)\b|\boberarm\w*|\bhaut du bras\b|\barm width\b/g,
    " upperarm ",
  ],
  [/\bpit ?(?:to|-) ?pit\b|\bchest\b|\bbust\w*|\boberweite\b|\bbrust\w*|\bpoitrine\b|\bpecho\b/g, " bust "],
  [/\bwrists?\b|\bcuffs?\b|\bbundchen\b|\bhandgelenk\b|\bpoignet\b/g, " cuff "],
  [/\b(?:bottom|lower|cast ?-?on) edge\b|\bhems?\b|\bsaum\w*/g, " hem "],
  [/\bhips?\b|\bhuft\w*|\bhanches\b/g, " hip "],
  [/\bwaist\b|\btaille\b(?! s)/g, " waist "],
  [/\bneck ?(?:line|opening)?\b|\bhals\w*|\bencolure\b/g, " neck "],
  [/\bsleeves?\b|\barmel\b|\bmanches?\b|\bmanga\b/g, " sleeve "],
  [/\barm ?holes?\b|\barmausschnitt\w*|\bemmanchure\b/g, " armhole "],
  [/\bunder ?arm\b|\barm ?pit\b/g, " underarm "],
  [/\byoke\b|\bpasse\b/g, " yoke "],
  [/\bshoulders?\b|\bschulter\w*/g, " shoulder "],
  [/\b(?:button|front) ?bands?\b|\bblende\b/g, " band "],
  [/\blength\b|\blong\b|\blange\b|\blongueur\b|\blargo\b|\bheight\b/g, " length "],
];

const PARTS = new Set(
  "bust cuff hem hip waist neck sleeve upperarm armhole underarm yoke shoulder band length".split(" "),
);
/** Words that say where or how, and not which part. */
const LIGHT = new Set(
  (
    "front back body total full garment sweater jumper cardigan pullover width wide across flat laid edge opening " +
    "depth deep fertig finale top half closed buttoned lay got get long tall high relaxed point side whole"
  ).split(" "),
);

interface Parts {
  readonly parts: ReadonlySet<string>;
  readonly words: ReadonlySet<string>;
}

/** Each label is compared with every other: its parts are looked for once. */
const KNOWN = new Map<string, Parts>();
const MAX_KNOWN = 5_000;

function partsOf(text: string): Parts {
  const known = KNOWN.get(text);
  if (known !== undefined) return known;
  if (KNOWN.size >= MAX_KNOWN) KNOWN.clear();
  const found = findParts(text);
  KNOWN.set(text, found);
  return found;
}

/** The parts of a garment that a text names, whatever words it has for them, and its other distinctive words. */
function findParts(text: string): Parts {
  const plain = PHRASES.reduce((now, [phrase, parts]) => now.replace(phrase, parts), normalised(text));
  const all = [...distinctiveWords(plain)];
  return {
    parts: new Set(all.filter((word) => PARTS.has(word))),
    words: new Set(all.filter((word) => !PARTS.has(word) && !LIGHT.has(word))),
  };
}

/**
 * How well a text names what a label means, 0 to 1: the label's parts and words that stand in the text, less what the text
 * names beside them. "Bicep" names "Upper arm" as well as "upper arm" does.
 */
export function namesPart(label: string, text: string): number {
  const wanted = partsOf(label);
  const there = partsOf(text);
  const size = wanted.parts.size + wanted.words.size / 2;
  if (size === 0) return 0;
  const commonParts = [...wanted.parts].filter((part) => there.parts.has(part)).length;
  const commonWords = [...wanted.words].filter((word) => there.words.has(word)).length;
  const found = (commonParts + commonWords / 2) / size;
  const beside = there.parts.size === 0 ? 1 : (commonParts + 0.3) / (there.parts.size + 0.3);
  return found * 0.6 + (commonParts + commonWords > 0 ? beside * 0.4 : 0);
}

const STOP_WORDS = new Set(
  (
    "a an and as at by cm count counts counted did do finished for from garment how in inch inches is it its make made " +
    "measure measured measurement measurements much many number of on or please report row rows round rounds s size st sts " +
    "stitch stitches the to total what with work worked you your around circumference after before please over is was"
  ).split(" "),
);

/** @returns a text in lower case, without diacritics. */
export function normalised(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}

/** @returns the distinctive words of a label, in lower case. */
export function distinctiveWords(text: string): Set<string> {
  const words = normalised(text).split(/[^\p{L}\d]+/u);
  return new Set(words.filter((word) => word.length > 1 && !STOP_WORDS.has(word)));
}

/** Share of a label's distinctive words that a text contains, 0 to 1; 0 if the label has none. */
export function shareOfWords(label: string, text: string): number {
  const wanted = distinctiveWords(label);
  if (wanted.size === 0) return 0;
  const there = distinctiveWords(text);
  let found = 0;
  for (const word of wanted) if (there.has(word)) found += 1;
  return found / wanted.size;
}

const LETTER_IN_FRONT = /^\(?([A-Za-z]\d{0,2})(?:\s*[.):–—]\s*|\s+-\s+|\)\s*)(?=\S)(.*)$/u;
const UNIT_BEHIND = /\s*[,(\[]?\s*(?:in\s+)?\b(?:cms?|centimet(?:re|er)s?|in|inch|inches|zoll)\b\.?\s*[)\]]?$/i;

/** Splits "B. Upper arm" into its letter and its words; the letter is "" where none stands in front. */
export function splitLetter(text: string): { readonly letter: string; readonly label: string } {
  const match = LETTER_IN_FRONT.exec(text);
  return match ? { letter: (match[1] ?? "").toUpperCase(), label: match[2] ?? "" } : { letter: "", label: text };
}

/** @returns a label without the unit that stands behind it: "Bust (cm)" is "Bust". */
export function withoutUnit(label: string): string {
  const cut = label.replace(UNIT_BEHIND, "").trim();
  return cut === "" ? label : cut;
}

/** The unit that a heading names, null where it names none, or both. */
export function unitNamed(text: string): "cm" | "in" | null {
  const inCm = /\bcms?\b|centimet|zentimeter/i.test(text);
  const inInches = /\binch(?:es)?\b|\bzoll\b|\(\s*(?:in\.?|["”″])\s*\)|[,\s]in\.?$|″|["”]$/i.test(text);
  if (inCm === inInches) return null;
  return inCm ? "cm" : "in";
}

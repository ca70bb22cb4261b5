const ABOUT = /^(?:approx(?:imately|\.)?|about|roughly|around|circa|ca\.?|c\.|etwa|env(?:iron|\.)?|~|≈|±)\s*/i;
const MARKS_BEHIND = /\s*(?:\*+|†|¹|²|³|\?+|!+|ish|or so)$/i;
const IN_BRACKETS = /^(.*\d.*?|.*[½¼¾⅛⅜⅝⅞⅓⅔].*?)\s*[([].*[)\]]$/;
const UNIT = String.raw`(?:cms?|centimet(?:re|er)s?|mm|in(?:ch(?:es)?)?|zoll|″|"|”|'')\.?`;
const TWO_UNITS = new RegExp(String.raw`^(.+?${UNIT})\s*(?:/|\||=|or|oder)\s*.+?${UNIT}$`, "i");
const SPAN = new RegExp(String.raw`^(.+?)\s*(?:-|–|—|\bto\b|\bbis\b|\bà\b)\s*(\S.*?)\s*(${UNIT})?$`, "i");
const POINTS_PART_THOUSANDS = /^\d{1,3}(?:[.'’ ]\d{3})+,\d+(?=\D|$)/;
const COMMAS_PART_THOUSANDS = /^\d{1,3}(?:[,'’ ]\d{3})+\.\d+(?=\D|$)/;
const WHOLE_THOUSANDS = /^\d{1,3}(?:[.,'’ ]\d{3})+(?=\D|$)/;

/** A number without what people write around it: `approx. 111*` is `111`, `1.234,5` is `1234.5`. */
export function plainNumber(text: string): string {
  const bare = text.trim().replace(ABOUT, "").replace(MARKS_BEHIND, "");
  const outside = IN_BRACKETS.exec(bare)?.[1] ?? bare;
  return outside
    .replace(POINTS_PART_THOUSANDS, (number) => number.replace(/[.'’ ]/g, "").replace(",", "."))
    .replace(COMMAS_PART_THOUSANDS, (number) => number.replace(/[,'’ ]/g, ""));
}

/** The same where three decimals make no sense: `1.050` is `1050`. */
export function plainWhole(text: string): string {
  return plainNumber(text).replace(WHOLE_THOUSANDS, (number) => number.replace(/[.,'’ ]/g, ""));
}

/** A length in words that `parseLength` reads; of `86 cm / 33 3/4 in` the first. */
export function plainLength(text: string): string {
  const number = plainNumber(text);
  const first = TWO_UNITS.exec(number)?.[1] ?? number;
  return first
    .replace(/\s*(?:cms|centimet(?:re|er)s?)\.?$/i, " cm")
    .replace(/\s*(?:zoll|'')$/i, " in")
    .trim();
}

/** Both ends of a span, each with the unit written behind it: `32–34"` is `32"` and `34"`; null where it is none. */
export function spanOf(text: string): readonly [string, string] | null {
  const [, low, high, unit = ""] = SPAN.exec(text) ?? [];
  return low === undefined || high === undefined ? null : [low + unit, high + unit];
}

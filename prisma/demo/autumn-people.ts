import { saltmarshPattern } from "./saltmarsh-pattern";

/** Days before the demonstration is laid; a negative number is so many days ahead. */
type DaysAgo = number;

/** What somebody of the second test has done so far. Invented throughout. */
export interface AutumnPerson {
  readonly name: string;
  /** Label of their size. */
  readonly size: string;
  readonly accepted?: DaysAgo;
  /** When an invitation ends that they have not answered. */
  readonly answersUntil?: DaysAgo;
  readonly declined?: DaysAgo;
  readonly stopped?: DaysAgo;
  /** When their report is or was due; by the test’s own days where left out. */
  readonly due?: DaysAgo;
  readonly update?: { readonly status: "track" | "behind" | "stuck"; readonly ago: DaysAgo; readonly note: string };
  /** What they have typed since their last report. */
  readonly draft?: { readonly typed: Readonly<Record<string, string>>; readonly ago: DaysAgo };
  readonly report?: { readonly kind: "swatch" | "off gauge" | "whole"; readonly ago: DaysAgo };
}

const FIRST_WAVE_DUE: DaysAgo = -25;
const SWATCH = { "swatch.0.fabric": "stocking", "swatch.0.stitches": "22" };

/** Whom the demo's sign-in page lets anybody look over the shoulder (`SHOWN_TESTER_ADDRESS`). */
const SHOWN_TESTER = "Marit";

export const AUTUMN_PEOPLE: readonly AutumnPerson[] = [
  { name: "Anneke", size: "XS", accepted: 30, due: FIRST_WAVE_DUE, report: { kind: "whole", ago: 2 } },
  {
    ...{ name: "Brígida", size: "XS", accepted: 28, due: FIRST_WAVE_DUE, report: { kind: "swatch", ago: 20 } },
    update: { status: "track", ago: 3, note: "The body is done." },
  },
  { name: "Celestine", size: "S", accepted: 30, due: FIRST_WAVE_DUE, report: { kind: "whole", ago: 5 } },
  {
    ...{ name: "Dagny", size: "S", accepted: 29, due: FIRST_WAVE_DUE, report: { kind: "swatch", ago: 22 } },
    update: {
      status: "stuck",
      ago: 1,
      note: "I do not get 3 stitches at the centre of the front, whatever I try.",
    },
  },
  { name: "Efua", size: "M", accepted: 31, due: FIRST_WAVE_DUE, report: { kind: "whole", ago: 1 } },
  {
    ...{ name: SHOWN_TESTER, size: "M", accepted: 24, due: FIRST_WAVE_DUE, report: { kind: "swatch", ago: 15 } },
    draft: { typed: { "reading.bust.0.value": "104.5" }, ago: 1 },
  },
  {
    ...{ name: "Frida", size: "L", accepted: 40, due: 3, report: { kind: "swatch", ago: 30 } },
    update: { status: "behind", ago: 9, note: "The sleeves wait for a quieter week." },
  },
  { name: "Gudrun", size: "L", accepted: 27, due: FIRST_WAVE_DUE, report: { kind: "off gauge", ago: 12 } },
  { name: "Hanneke", size: "XL", accepted: 26, due: FIRST_WAVE_DUE, draft: { typed: SWATCH, ago: 18 } },
  { name: "Imelda", size: "XL", accepted: 4 },
  { name: "Jadwiga", size: "2X", accepted: 30, due: FIRST_WAVE_DUE, report: { kind: "whole", ago: 3 } },
  { name: "Kateryna", size: "2X", accepted: 29, due: FIRST_WAVE_DUE, stopped: 6 },
  { name: "Leocadia", size: "3X", accepted: 3 },
  { name: "Mirembe", size: "3X", answersUntil: -4 },
  { name: "Noor", size: "4X", answersUntil: 2 },
  { name: "Odile", size: "5X", declined: 5 },
];

export interface AutumnApplicant {
  readonly name: string;
  /** Label of the size that they are near. */
  readonly near: string;
  readonly decision: "yes" | "maybe" | "no" | null;
  readonly ago: DaysAgo;
  readonly pastWork: string;
}

/** Who has applied and is no tester yet. */
export const AUTUMN_APPLICANTS: readonly AutumnApplicant[] = [
  { name: "Petra", near: "4X", decision: "yes", ago: 6, pastWork: "Two yokes and a cardigan last winter." },
  { name: "Renske", near: "5X", decision: "yes", ago: 5, pastWork: "" },
  { name: "Solveig", near: "2X", decision: "maybe", ago: 4, pastWork: "I test about four patterns a year." },
  { name: "Tuva", near: "S", decision: "no", ago: 4, pastWork: "" },
  { name: "Una", near: "4X", decision: null, ago: 2, pastWork: "This would be my first test." },
  { name: "Véronique", near: "M", decision: null, ago: 1, pastWork: "Socks, mostly, and one vest." },
  { name: "Yara", near: "5X", decision: null, ago: 0, pastWork: "" },
];

/** @throws {Error} where the pattern has no such size. */
export function autumnSize(label: string): string {
  const size = saltmarshPattern.sizes.find((one) => one.label === label);
  if (size === undefined) throw new Error(`the demonstration has no size ${label}`);
  return size.id;
}

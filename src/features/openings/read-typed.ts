import { textSchema, type PatternDocument, type Places } from "@/engine/pattern";
import { isDayIn, isTimeZone } from "@/server/time-zone";
import { askableMeasurements, bodyField, DAY_FIELDS, leastField, wantedField } from "./field-names";
import { daySchema, type Dates, type OpeningDocument, type TypedOpening } from "./schema";

const LONGEST_TITLE = 200;
const LONGEST_TEXT = 20_000;
const WHOLE = /^\d{1,5}$/;

/** What a form's field says that cannot stand so, or that it does not say yet. */
export interface FieldFault {
  readonly field: string;
  readonly says: string;
  /** Nothing is wrong: it is only not there yet. */
  readonly isMissing: boolean;
}

/** All that can be read of a form, the rest left out. */
export interface ReadOpening {
  readonly title: string;
  readonly places: Places;
  readonly document: Omit<OpeningDocument, "dates">;
  readonly dates: Partial<Dates>;
  readonly agreement: string;
}

/** A form's fields as what they tell, with all that is missing or wrong, in the form's order. */
export function readTyped(
  typed: TypedOpening,
  pattern: PatternDocument,
): { readonly opening: ReadOpening; readonly faults: readonly FieldFault[] } {
  const form = new TypedForm(typed);
  const title = form.text("title", { most: LONGEST_TITLE, missing: "Give the call a title." });
  const introduction = form.text("introduction");
  const places = readPlaces(form, pattern);
  const { timeZone, dates } = readDates(form);
  const asks = form.text("asks", { missing: "Say what testers are to do and to send." });
  const [yarn, tools] = [form.text("yarn"), form.text("tools")];
  const gives = form.text("gives", { missing: "Say what testers get for it." });
  const body = readBody(form, pattern);
  const mostApplications = form.whole("mostApplications");
  if (mostApplications === 0)
    form.wrong("mostApplications", "Take at least 1, or leave it empty to take all that come.");
  const agreement = form.text("agreement", { missing: "Write what testers agree to when they apply." });
  const document = { introduction, timeZone, asks, yarn, tools, gives, ...body, mostApplications };
  return { opening: { title, places, document, dates, agreement }, faults: form.faults };
}

class TypedForm {
  readonly faults: FieldFault[] = [];

  constructor(private readonly typed: TypedOpening) {}

  said(field: string): string {
    return this.typed[field]?.trim() ?? "";
  }

  missing(field: string, says: string): void {
    this.faults.push({ field, says, isMissing: true });
  }

  wrong(field: string, says: string): void {
    this.faults.push({ field, says, isMissing: false });
  }

  text(field: string, { most = LONGEST_TEXT, missing }: { most?: number; missing?: string } = {}): string {
    const said = this.said(field);
    if (said === "" && missing !== undefined) this.missing(field, missing);
    if (said.length > most) this.wrong(field, `Keep it under ${most.toLocaleString("en")} characters.`);
    if (!textSchema.safeParse(said).success) this.wrong(field, "This holds a character that cannot be stored.");
    return said;
  }

  /** A whole number, 0 or more; null where nothing is said or it cannot be read. */
  whole(field: string): number | null {
    const said = this.said(field);
    if (said === "") return null;
    if (WHOLE.test(said)) return Number(said);
    this.wrong(field, `“${said}” is not a whole number such as 3.`);
    return null;
  }
}

function readPlaces(form: TypedForm, pattern: PatternDocument): Places {
  const read = pattern.sizes.map(({ id, label }) => {
    const before = form.faults.length;
    const [least, wanted] = [form.whole(leastField(id)) ?? 0, form.whole(wantedField(id)) ?? 0];
    const isRead = form.faults.length === before;
    if (isRead && wanted < least)
      form.wrong(wantedField(id), `At least ${least} are needed in ${label}, so give ${least} spots or more.`);
    return { id, least, wanted, isRead };
  });
  const [first] = pattern.sizes;
  if (first !== undefined && read.every(({ wanted, isRead }) => isRead && wanted === 0))
    form.missing(wantedField(first.id), "Give at least one size a tester spot.");
  return Object.fromEntries(read.map(({ id, least, wanted }) => [id, { least: Math.min(least, wanted), wanted }]));
}

const DAY_WORDS: Readonly<Record<keyof Dates, string>> = {
  applyUntil: "the last day to apply",
  startOn: "the day to start",
  swatchBy: "the day for swatches",
  reportBy: "the day for reports",
};

function readDates(form: TypedForm): { timeZone: string; dates: Partial<Dates> } {
  const zone = form.said("timeZone");
  const timeZone = isTimeZone(zone) ? zone : "";
  if (zone === "") form.missing("timeZone", "Choose the time zone that the days are meant in.");
  else if (timeZone === "") form.wrong("timeZone", `“${zone}” is not a time zone that is known here.`);
  const dates: Partial<Dates> = {};
  let latest: keyof Dates | undefined;
  for (const field of DAY_FIELDS) {
    const day = form.said(field);
    if (day === "") form.missing(field, `Give ${DAY_WORDS[field]}.`);
    else if (!isDay(day, timeZone)) form.wrong(field, `“${day}” is not a day such as 2027-03-14.`);
    else {
      dates[field] = day;
      const before = latest === undefined ? undefined : dates[latest];
      if (latest !== undefined && before !== undefined && day < before)
        form.wrong(field, `This is before ${DAY_WORDS[latest]}, ${before}. The days follow one another.`);
      else latest = field;
    }
  }
  return { timeZone, dates };
}

function isDay(day: string, timeZone: string): boolean {
  return daySchema.safeParse(day).success && isDayIn(day, timeZone === "" ? "UTC" : timeZone);
}

function readBody(form: TypedForm, pattern: PatternDocument): Pick<OpeningDocument, "bodyAsked" | "fitBy"> {
  const askable = askableMeasurements(pattern);
  const fitBy = askable.filter(({ id, decides }) => decides && form.said(bodyField(id)) === "fit").map(({ id }) => id);
  const bodyAsked = askable.filter(({ id }) => ["asked", "fit"].includes(form.said(bodyField(id)))).map(({ id }) => id);
  const first = askable.find(({ decides }) => decides);
  if (first !== undefined && fitBy.length === 0)
    form.missing(bodyField(first.id), "Choose at least one body measurement that decides the size.");
  return { bodyAsked, fitBy };
}

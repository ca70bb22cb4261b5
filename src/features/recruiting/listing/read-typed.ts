import { textSchema, type PatternDocument, type Places } from "@/engine/pattern";
import { usualMost } from "@/engine/places";
import { isDayIn, isTimeZone } from "@/server/time-zone";
import {
  askableMeasurements,
  bodyField,
  DAY_FIELDS,
  leastField,
  mostField,
  NOTICE_FIELDS,
  wantedField,
} from "./field-names";
import { sharingSchema, SHARING_FIELDS, type PhotoSharing } from "./photo-sharing-schema";
import {
  daySchema,
  MOST_MONTHS_STORED,
  OLDEST_MINIMUM,
  YOUNGEST_AGE,
  type Dates,
  type ListingDocument,
  type NoticeFacts,
  type TypedListing,
} from "./schema";

const LONGEST_TITLE = 200;
const LONGEST_TEXT = 20_000;
const WHOLE = /^\d{1,5}$/;

/** A field of the form that is wrong or still empty. */
export interface FieldFault {
  readonly field: string;
  readonly message: string;
  /** Nothing is wrong: the field is only still empty. */
  readonly isMissing: boolean;
}

/** Everything that can be read from a form, without the rest. */
export interface ReadListing {
  readonly title: string;
  readonly places: Places;
  readonly document: Omit<ListingDocument, "dates">;
  readonly dates: Partial<Dates>;
  /** The designer's own text. */
  readonly agreement: string;
  readonly sharing: PhotoSharing;
}

/** Reads a form's fields, with everything missing or wrong in the order of the form. */
export function readTyped(
  typed: TypedListing,
  pattern: PatternDocument,
): { readonly listing: ReadListing; readonly faults: readonly FieldFault[] } {
  const form = new TypedForm(typed);
  const title = form.text("title", { max: LONGEST_TITLE, missing: "Enter a title, such as “Test of Meadow”." });
  const introduction = form.text("introduction");
  const places = readPlaces(form, pattern);
  const { timeZone, dates } = readDates(form);
  const releaseOn = readRelease(form, timeZone);
  const asks = form.text("asks", { missing: "Say what testers do and send." });
  const [yarn, tools] = [form.text("yarn"), form.text("tools")];
  const gives = form.text("gives", { missing: "Say what testers get, such as the finished pattern." });
  const body = readBody(form, pattern);
  const mostApplications = form.whole("mostApplications");
  if (mostApplications === 0) form.wrong("mostApplications", "Enter 1 or more, or leave it empty for no limit.");
  const agreement = form.text("agreement", { missing: "Write what testers agree to." });
  const sharing = readSharing(form);
  const document = {
    ...{ introduction, timeZone, asks, yarn, tools, gives, ...body, mostApplications, agreementText: agreement },
    ...(releaseOn === null ? {} : { releaseOn }),
    ...readNotice(form),
  };
  return { listing: { title, places, document, dates, agreement, sharing }, faults: form.faults };
}

function readRelease(form: TypedForm, timeZone: string): string | null {
  const day = form.typedText("releaseOn");
  if (day === "") return null;
  if (isDay(day, timeZone)) return day;
  form.wrong("releaseOn", `“${day}” is not a date. Enter one such as 2027-03-14, or leave it empty.`);
  return null;
}

function readSharing(form: TypedForm): PhotoSharing {
  const [progressPhotos, finishedPhotos] = SHARING_FIELDS.map(
    (field) => sharingSchema.safeParse(form.typedText(field)).data ?? null,
  );
  return { progressPhotos: progressPhotos ?? null, finishedPhotos: finishedPhotos ?? null };
}

class TypedForm {
  readonly faults: FieldFault[] = [];

  constructor(private readonly typed: TypedListing) {}

  typedText(field: string): string {
    return this.typed[field]?.trim() ?? "";
  }

  missing(field: string, message: string): void {
    this.faults.push({ field, message, isMissing: true });
  }

  wrong(field: string, message: string): void {
    this.faults.push({ field, message, isMissing: false });
  }

  text(field: string, { max = LONGEST_TEXT, missing }: { max?: number; missing?: string } = {}): string {
    const text = this.typedText(field);
    if (text === "" && missing !== undefined) this.missing(field, missing);
    if (text.length > max)
      this.wrong(
        field,
        `This has ${text.length.toLocaleString("en")} characters; the limit is ${max.toLocaleString("en")}.`,
      );
    if (!textSchema.safeParse(text).success)
      this.wrong(field, "This contains a character that cannot be stored. Type it again instead of pasting it.");
    return text;
  }

  /** A whole number, 0 or more; null if the field is empty or cannot be read. */
  whole(field: string): number | null {
    const text = this.typedText(field);
    if (text === "") return null;
    if (WHOLE.test(text)) return Number(text);
    this.wrong(field, `“${text}” is not a whole number. Enter a number such as 3.`);
    return null;
  }
}

function readPlaces(form: TypedForm, pattern: PatternDocument): Places {
  const read = pattern.sizes.map(({ id, label }) => {
    const before = form.faults.length;
    const [least, wanted] = [form.whole(leastField(id)) ?? 0, form.whole(wantedField(id)) ?? 0];
    const isRead = form.faults.length === before;
    if (isRead && wanted < least)
      form.wrong(wantedField(id), `The minimum for ${label} is ${least}, so it needs ${least} spots or more.`);
    const most = form.whole(mostField(id)) ?? usualMost(wanted);
    if (isRead && most < wanted)
      form.wrong(mostField(id), `${label} has ${wanted} spots, so “at most” must be ${wanted} or more.`);
    return { id, least, wanted, most, isRead };
  });
  const [first] = pattern.sizes;
  if (first !== undefined && read.every(({ wanted, isRead }) => isRead && wanted === 0))
    form.missing(wantedField(first.id), "At least one size needs a spot. Enter a number such as 3.");
  return Object.fromEntries(
    read.map(({ id, least, wanted, most }) => [id, { least: Math.min(least, wanted), wanted, most }]),
  );
}

const DAY_WORDS: Readonly<Record<keyof Dates, string>> = {
  applyUntil: "the last day to apply",
  startOn: "the start date",
  swatchBy: "the deadline for swatches",
  reportBy: "the deadline for reports",
};

function readDates(form: TypedForm): { timeZone: string; dates: Partial<Dates> } {
  const zone = form.typedText("timeZone");
  const timeZone = isTimeZone(zone) ? zone : "";
  if (zone === "") form.missing("timeZone", "Choose a time zone, such as Europe/Lisbon.");
  else if (timeZone === "")
    form.wrong("timeZone", `“${zone}” is not a known time zone. Choose one such as Europe/Lisbon.`);
  const dates: Partial<Dates> = {};
  let latest: keyof Dates | undefined;
  for (const field of DAY_FIELDS) {
    const day = form.typedText(field);
    if (day === "") form.missing(field, `Choose ${DAY_WORDS[field]}.`);
    else if (!isDay(day, timeZone)) form.wrong(field, `“${day}” is not a date. Enter one such as 2027-03-14.`);
    else {
      dates[field] = day;
      const before = latest === undefined ? undefined : dates[latest];
      if (latest !== undefined && before !== undefined && day < before)
        form.wrong(field, `This is before ${DAY_WORDS[latest]}, ${before}. Choose that day or a later one.`);
      else latest = field;
    }
  }
  return { timeZone, dates };
}

function isDay(day: string, timeZone: string): boolean {
  return daySchema.safeParse(day).success && isDayIn(day, timeZone === "" ? "UTC" : timeZone);
}

function readBody(form: TypedForm, pattern: PatternDocument): Pick<ListingDocument, "bodyAsked" | "fitBy"> {
  const askable = askableMeasurements(pattern);
  const fitBy = askable
    .filter(({ id, decides }) => decides && form.typedText(bodyField(id)) === "fit")
    .map(({ id }) => id);
  const bodyAsked = askable
    .filter(({ id }) => ["asked", "fit"].includes(form.typedText(bodyField(id))))
    .map(({ id }) => id);
  const first = askable.find(({ decides }) => decides);
  if (first !== undefined && fitBy.length === 0)
    form.missing(bodyField(first.id), "Choose at least one measurement that decides the size.");
  return { bodyAsked, fitBy };
}

/** The designer's part of the privacy notice, once it is complete. */
function readNotice(form: TypedForm): { readonly notice?: NoticeFacts } {
  const before = form.faults.length;
  const responsible = form.text(NOTICE_FIELDS.responsible, {
    max: LONGEST_TITLE,
    missing: "Say who is responsible for testers’ data, such as your name or your business.",
  });
  const contact = form.text(NOTICE_FIELDS.contact, {
    max: LONGEST_TITLE,
    missing: "Say where testers reach you about their data, such as an e-mail address.",
  });
  const minimumAge = wholeWithin(form, NOTICE_FIELDS.minimumAge, {
    ...{ least: YOUNGEST_AGE, most: OLDEST_MINIMUM },
    range: `Enter an age from ${YOUNGEST_AGE} to ${OLDEST_MINIMUM}.`,
  });
  const monthsStored = wholeWithin(form, NOTICE_FIELDS.monthsStored, {
    ...{ least: 1, most: MOST_MONTHS_STORED },
    range: `Enter a number of months from 1 to ${MOST_MONTHS_STORED}, such as 12.`,
  });
  const more = form.text(NOTICE_FIELDS.more);
  if (form.faults.length > before || minimumAge === null || monthsStored === null) return {};
  return { notice: { responsible, contact, minimumAge, monthsStored, more } };
}

function wholeWithin(
  form: TypedForm,
  field: string,
  { least, most, range }: { readonly least: number; readonly most: number; readonly range: string },
): number | null {
  if (form.typedText(field) === "") form.missing(field, range);
  const number = form.whole(field);
  if (number !== null && (number < least || number > most)) form.wrong(field, range);
  return number;
}

import { describe, expect, it } from "vitest";
import { initialListing } from "../../../../src/features/recruiting/listing/initial-listing";
import { readTyped } from "../../../../src/features/recruiting/listing/read-typed";
import type { TypedListing } from "../../../../src/features/recruiting/listing/schema";
import { typedListing } from "../../../../src/features/recruiting/listing/typed-listing";
import { completeListing } from "../../../../src/features/recruiting/listing/complete-listing";
import { usualInvitations } from "../../../../src/features/recruiting/listing/usual-invitations";
import { patternDocument } from "../../../factories/pattern";

const pattern = patternDocument({
  bodyMeasurements: [
    { id: "bust", label: "Bust", how: "Around." },
    { id: "arm", label: "Arm", how: "Down." },
  ],
});
const now = new Date("2027-03-01T12:00:00Z");

function typed(change: TypedListing = {}): TypedListing {
  return {
    ...initialListing(pattern, { title: "Vest test", places: null, timeZone: "Europe/Lisbon" }),
    ...{ applyUntil: "2027-03-01", startOn: "2027-03-01", swatchBy: "2027-04-01", reportBy: "2027-06-01" },
    ...{ gives: "The pattern.", noticeResponsible: "Invented Designs", noticeContact: "privacy@example.org" },
    ...change,
  };
}

function faultsOf(
  change: TypedListing,
  published: Parameters<typeof completeListing>[1]["published"] = null,
): string[] {
  const whole = completeListing(typed(change), { pattern, now, published });
  return whole.ok ? [] : whole.faults.map(({ field, message }) => `${field}: ${message}`);
}

it("starts with what the pattern says: testers needed, invitations for the usual dropout, body measurements, hook", () => {
  const initial = typed();
  const needed = Number(initial["least.small"]);
  expect(Number(initial["wanted.small"])).toBe(usualInvitations(needed));
  // At 70 % each, 3 of 5 finish with 0.3087 + 0.36015 + 0.16807 = 0.83692, 3 of 4 with 0.4116 + 0.2401 = 0.6517 (binomial).
  expect(usualInvitations(3)).toBe(5);
  expect(initial).toMatchObject({ "body.bust": "fit", tools: expect.stringContaining("4 mm hook") as unknown });
  expect(initial["body.arm"]).toBeUndefined();
  expect(faultsOf({})).toEqual([]);
});

it("says at the field what is wrong with the spots", () => {
  expect(faultsOf({ "least.small": "3", "wanted.small": "2" })).toEqual([
    "wanted.small: The minimum for S is 3, so it needs 3 spots or more.",
  ]);
  expect(faultsOf({ "least.small": "1.5", "wanted.large": "−2" })).toEqual([
    "least.small: “1.5” is not a whole number. Enter a number such as 3.",
    "wanted.large: “−2” is not a whole number. Enter a number such as 3.",
  ]);
  expect(faultsOf({ "wanted.small": "4", "most.small": "3" })).toEqual([
    "most.small: S has 4 spots, so “at most” must be 4 or more.",
  ]);
  const none = { "least.small": "", "wanted.small": "", "least.large": "0", "wanted.large": "" };
  expect(faultsOf(none)).toEqual(["wanted.small: At least one size needs a spot. Enter a number such as 3."]);
});

it("takes 3 or as many as there are spots where “at most” is empty", () => {
  const whole = completeListing(typed({ "wanted.small": "5", "most.small": "", "most.large": "" }), {
    ...{ pattern, now, published: null },
  });
  expect(whole).toMatchObject({ listing: { places: { small: { wanted: 5, most: 5 }, large: { most: 3 } } } });
});

describe("dates", () => {
  it("must be in order, may be equal, and the error is at the one that is too early", () => {
    expect(faultsOf({ swatchBy: "2027-02-28" })).toEqual([
      "swatchBy: This is before the start date, 2027-03-01. Choose that day or a later one.",
    ]);
    expect(faultsOf({ startOn: "2027-02-29", reportBy: "" })).toEqual([
      "startOn: “2027-02-29” is not a date. Enter one such as 2027-03-14.",
      "reportBy: Choose the deadline for reports.",
    ]);
  });

  it("must not have passed when they are published, in the call's zone, but may have passed afterwards", () => {
    const over = ["applyUntil: This day has passed. Choose today or later."];
    expect(faultsOf({ applyUntil: "2027-02-28" })).toEqual(over);
    // At noon in UTC it is 1 March in Lisbon and, at UTC+14, 2 March on Kiritimati.
    expect(faultsOf({ timeZone: "Pacific/Kiritimati" })).toEqual(over);
    const earlier = completeListing(typed(), { pattern, now: new Date(0), published: null });
    if (!earlier.ok) throw new Error("whole");
    const later = new Date("2027-03-20T00:00:00Z");
    expect(completeListing(typed(), { pattern, now: later, published: earlier.listing.document }).ok).toBe(true);
    expect(completeListing(typed(), { pattern, now: later, published: null }).ok).toBe(false);
  });

  it("need a known time zone", () => {
    expect(faultsOf({ timeZone: "Mars/Olympus" })).toEqual([
      "timeZone: “Mars/Olympus” is not a known time zone. Choose one such as Europe/Lisbon.",
    ]);
  });
});

it("reads an empty form, and lists everything that is missing", () => {
  const { listing, faults } = readTyped({}, pattern);
  expect(listing).toMatchObject({ title: "", dates: {}, document: { bodyAsked: [], fitBy: [] } });
  expect(faults.map(({ field }) => field)).toEqual([
    ...["title", "wanted.small", "timeZone", "applyUntil", "startOn", "swatchBy", "reportBy"],
    ...["asks", "gives", "body.bust", "agreement"],
    ...["noticeResponsible", "noticeContact", "noticeMinimumAge", "noticeMonthsStored"],
  ]);
  expect(faults.every(({ isMissing }) => isMissing)).toBe(true);
});

it("is the same after it is published and read into the form again", () => {
  const whole = completeListing(typed({ mostApplications: "40", "body.arm": "asked" }), {
    pattern,
    now,
    published: null,
  });
  if (!whole.ok) throw new Error("whole");
  const again = completeListing(typedListing(whole.listing), { pattern, now, published: null });
  expect(again).toEqual(whole);
});

it("asks for the privacy notice, and for an age and a time that can be", () => {
  expect(faultsOf({ noticeContact: " ", noticeMinimumAge: "16", noticeMonthsStored: "61" })).toEqual([
    "noticeContact: Say where testers reach you about their data, such as an e-mail address.",
    "noticeMinimumAge: Enter an age from 18 to 99.",
    "noticeMonthsStored: Enter a number of months from 1 to 60, such as 12.",
  ]);
});

it("lets a measurement that some size lacks be asked for, but not decide the size", () => {
  expect(faultsOf({ "body.bust": "asked", "body.arm": "fit" })).toEqual([
    "body.bust: Choose at least one measurement that decides the size.",
  ]);
});

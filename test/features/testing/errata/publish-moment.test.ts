import { expect, it } from "vitest";
import { publishMoment } from "../../../../src/features/testing/errata/publish-moment";

it("is now for today, the end of an earlier day, and nothing for a day to come, in the designer's zone", () => {
  // At 23:30 UTC on 1 March it is 2 March in Auckland, at UTC+13.
  const now = new Date("2027-03-01T23:30:00Z");
  expect(publishMoment("2027-03-02", "Pacific/Auckland", now)).toEqual(now);
  expect(publishMoment("2027-03-02", "UTC", now)).toBeNull();
  expect(publishMoment("2027-02-28", "UTC", now)).toEqual(new Date("2027-03-01T00:00:00Z"));
  expect(publishMoment("2027-03-01", "Pacific/Auckland", now)).toEqual(new Date("2027-03-01T11:00:00Z"));
});

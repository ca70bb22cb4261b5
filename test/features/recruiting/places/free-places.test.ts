import { expect, it } from "vitest";
import { laterDates } from "@/features/recruiting/places/free-places";
import { invitationsNeeded, lossOf } from "@/features/recruiting/places/places-loss";
import { daysAfter } from "@/server/time-zone";

const days = { startOn: "2028-02-20", swatchBy: "2028-02-27", reportBy: "2028-04-10" };

it("shifts each day by as many as the call has run, over a leap day and a change of clocks", () => {
  // By hand: from 20 to 25 February are 5 days; 2028 has a 29 February.
  expect(laterDates(days, { today: "2028-02-25", daysLater: daysAfter })).toEqual({
    startOn: "2028-02-25",
    swatchBy: "2028-03-03",
    reportBy: "2028-04-15",
  });
});

it("leaves the days as they are before the call has begun", () => {
  expect(laterDates(days, { today: "2028-02-01", daysLater: daysAfter })).toEqual(days);
});

it("asks for 5 invitations to have 3 finish four times in five, at the usual loss", () => {
  // Binomial: 5 at 70 % give 3 or more with 0.83692, 4 with 0.6517.
  expect(invitationsNeeded(3, lossOf({ invited: 9, reported: 0 }))).toBe(5);
});

it("takes the owner's own loss once ten were invited", () => {
  expect(lossOf({ invited: 10, reported: 9 })).toMatchObject({
    share: expect.closeTo(0.1, 9),
    record: { invited: 10 },
  });
  // 3 at 90 % each: 0.729 is too little; 4: 0.9477.
  expect(invitationsNeeded(3, lossOf({ invited: 10, reported: 9 }))).toBe(4);
  expect(invitationsNeeded(1, lossOf({ invited: 12, reported: 0 }))).not.toBeNull();
});

import { describe, expect, it } from "vitest";
import { messageText } from "@/features/recruiting/places/message-text";

const message = {
  name: "نور 🧶",
  pattern: "Test vest",
  size: "M",
  link: "https://sizewright.example/invited/abc",
  // Midnight after each day in Lisbon: in winter time that is UTC.
  dates: {
    startsAt: new Date("2027-03-01T00:00:00Z"),
    swatchBy: new Date("2027-03-15T00:00:00Z"),
    reportBy: new Date("2027-04-30T23:00:00Z"),
  },
  expiresAt: new Date("2027-02-21T00:00:00Z"),
  timeZone: "Europe/Lisbon",
  from: "Ana",
};

describe("the message of an invitation", () => {
  it("tells name, size, link and days, each until its last minute, across the change of clocks", () => {
    const text = messageText(message);
    expect(text).toContain("Hello نور 🧶,");
    expect(text).toContain("make size M");
    expect(text).toContain("Start: from Monday 1 March 2027, 00:00");
    expect(text).toContain("Swatch: by Sunday 14 March 2027, 23:59");
    // Lisbon is an hour ahead of UTC from 28 March 2027 on.
    expect(text).toContain("Report: by Friday 30 April 2027, 23:59");
    expect(text).toContain("reply by Saturday 20 February 2027, 23:59");
    expect(text).toContain("\nhttps://sizewright.example/invited/abc\n");
    expect(text).toContain("Time zone: Lisbon (Europe)");
  });

  it("gives the same moments in the reader’s zone, past the date line too", () => {
    const text = messageText({ ...message, timeZone: "Pacific/Auckland" });
    // Auckland is 13 hours ahead of UTC in March, 12 from 4 April 2027 on.
    expect(text).toContain("Swatch: by Monday 15 March 2027, 12:59");
    expect(text).toContain("Report: by Saturday 1 May 2027, 10:59");
  });

  it("leaves the days out where the call has told none", () => {
    expect(messageText({ ...message, dates: null })).not.toContain("Swatch");
  });
});

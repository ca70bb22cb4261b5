import type { ListingDocument } from "../../src/features/recruiting/listing/schema";

/** An listing of the test pattern that asks for the bust; its days are long to come. */
export function listingDocument(change: Partial<ListingDocument> = {}): ListingDocument {
  return {
    introduction: "An invented call.",
    timeZone: "Europe/Lisbon",
    dates: { applyUntil: "2090-03-14", startOn: "2090-04-01", swatchBy: "2090-04-10", reportBy: "2090-06-01" },
    asks: "Work the vest and measure it.",
    yarn: "Any light yarn.",
    tools: "A 4 mm hook.",
    gives: "The finished pattern.",
    bodyAsked: ["bust"],
    fitBy: ["bust"],
    mostApplications: null,
    notice: {
      responsible: "Invented Designs",
      contact: "privacy@example.org",
      minimumAge: 18,
      monthsStored: 12,
      more: "",
    },
    ...change,
  };
}

import { describe, expect, it } from "vitest";
import { titlesUnder } from "@/server/titles-under";

/** As Next puts a page's own title into the template of what it stands under. */
function titled(page: string, name: string): string {
  const titles = titlesUnder(name);
  if (typeof titles === "string" || !("template" in titles) || !titles.template) throw new Error("no template");
  return titles.template.replace(/%s/g, page);
}

describe("titles of pages", () => {
  it("name the pattern or the call", () => {
    expect(titled("Gaps", "Saltmarsh Tee")).toBe("Gaps · Saltmarsh Tee · Sizewright");
  });

  it("take a name that holds the mark of the template as it is", () => {
    expect(titled("Gaps", "100%stretch")).toBe("Gaps · 100% stretch · Sizewright");
  });
});

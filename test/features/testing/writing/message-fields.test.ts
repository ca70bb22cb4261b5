import { describe, expect, it } from "vitest";
import { fieldFaults, fillFields, type FieldValues } from "@/features/recruiting/own-words/message-fields-computed";

const ADA: FieldValues = {
  name: "Ada [M]",
  size: "$& 2",
  "swatch day": "Monday 1 March 2027, 23:59",
  "report day": "Friday 30 April 2027, 23:59",
};
const people = (...names: string[]) => names.map((name) => ({ name, values: { ...ADA, "report day": null } }));

describe("fields of a message to several testers", () => {
  it("are filled in wherever they stand, and what is filled in is not read again", () => {
    expect(fillFields("[name], size [size]: by [report day]. [name]!", ADA)).toBe(
      "Ada [M], size $& 2: by Friday 30 April 2027, 23:59. Ada [M]!",
    );
  });

  it("that do not exist are refused with those that do", () => {
    expect(fieldFaults("Hello [nmae], see [name]", [{ name: "Ada", values: ADA }])).toEqual([
      "Nothing can be filled in for “[nmae]”. Use [name], [size], [swatch day], [report day], or put your words in round brackets.",
    ]);
    const [fault] = fieldFaults("Hello [nmae]", [
      { name: "applicants", values: { ...ADA, size: null, "swatch day": null, "report day": null } },
    ]);
    expect(fault).toContain("Use [name], or put");
    expect(fillFields("[toString] [nmae]", ADA)).toBe("[toString] [nmae]");
    expect(fieldFaults("[constructor]", [])).toHaveLength(1);
  });

  it("that are not known for some of them name those", () => {
    expect(fieldFaults("by [report day]", people("Ada", "Bo", "Cy", "Di", "Eli"))).toEqual([
      "“[report day]” is not known for Ada, Bo, Cy and 2 more. Leave it out or untick them.",
    ]);
    expect(fieldFaults("in size [size]", people("Ada"))).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { parseApplicants, parseCall, parseCallInSteps, parsePattern, readJson } from "@/engine/pattern";
import { callDocument, reader } from "../../factories/call";
import { patternDocument } from "../../factories/pattern";

/** The document as JSON, with one place in it set to a value (`undefined` takes it out). */
function withValue(document: object, path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = JSON.parse(JSON.stringify(document));
  let at: unknown = copy;
  for (const part of path.slice(0, -1)) at = Reflect.get(Object(at), part);
  const last = path.at(-1);
  if (last !== undefined) Reflect.set(Object(at), last, value);
  return JSON.parse(JSON.stringify(copy));
}

function faultOf(parsed: ReturnType<typeof parsePattern | typeof parseCall>): string {
  return parsed.ok ? "none" : parsed.faults.map(({ path, says }) => `${path}: ${says}`).join("\n");
}

describe("a pattern document", () => {
  it("is read whole", () => {
    expect(parsePattern(withValue(patternDocument(), ["instructions"], "Cast on."))).toMatchObject({ ok: true });
  });

  it.each([
    [["name"], 7, "name: should be text."],
    [["name"], "a\u0000b", "name: contains a character that cannot be stored."],
    [["colour"], "red", "colour: is not a key of this document."],
    [["fabrics"], [], "fabrics: must hold at least one fabric."],
    [["fabrics", 0, "gauge", "stitches"], 0, "fabrics[0].gauge.stitches: must be above 0."],
    [["fabrics", 0, "toolMm"], "4", "fabrics[0].toolMm: should be a number."],
    [
      ["sizes", 0, "id"],
      "all",
      "sizes[0].id: must be an id: a small letter, then up to 39 small letters, digits or hyphens, and not “all”.",
    ],
    [["sizes", 1, "id"], "small", "sizes[1].id: “small” appears twice in this list."],
    [["sizes", 1, "body"], { waist: 80 }, "sizes[1].body.bust: is missing, and sizes are ordered by it."],
    [["counts", 0, "fabric"], "lace", "counts[0].fabric: there is no fabric “lace”."],
    [["counts", 0, "repeat"], { of: 0, plus: 0 }, "counts[0].repeat.of: must be above 0."],
    [["allowances", 0, "cm"], { small: 1 }, "allowances[0].cm.large: is missing; a record by size names every size."],
    [["measurements", 0, "terms"], [], "measurements[0].terms: must hold at least one term."],
    [
      ["measurements", 0, "terms", 0],
      { times: 2, count: "wid" },
      "measurements[0].terms[0].count: there is no count “wid”.",
    ],
    [
      ["measurements", 0, "terms", 0],
      { times: 2, counts: "width" },
      "measurements[0].terms[0].count: is missing; it should be text.",
    ],
    [["measurements", 0, "toleranceCm"], -1, "measurements[0].toleranceCm: must be above 0."],
    [
      ["measurements", 0, "target", "body"],
      "hip",
      "measurements[0].target.body: the body measurement “hip” is missing in size S, L.",
    ],
    [["grading", "width", "small"], 9.5, "grading.width.small: must be a whole number."],
    [["grading", "width", "large"], undefined, "grading.width.large: is missing; a record by size names every size."],
  ])("tells a fault at %j", (path, value, says) => {
    expect(faultOf(parsePattern(withValue(patternDocument(), path, value)))).toContain(says);
  });

  it("treats ids like constructor as ordinary names", () => {
    const [small, large] = patternDocument().sizes;
    const pattern = patternDocument({
      sizes: [small, large].flatMap((size) => (size ? [{ ...size, body: { bust: 90, constructor: 12 } }] : [])),
      allowances: [
        { id: "edging", label: "Edging", cm: 1 },
        { id: "constructor", label: "Odd", cm: { small: 1, large: 2 } },
      ],
    });
    expect(parsePattern(pattern)).toMatchObject({ ok: true });
    expect(faultOf(parsePattern(patternDocument({ sizeBy: "constructor" })))).toContain(
      "sizes[0].body.constructor: is missing",
    );
  });

  it("refuses __proto__ as a key instead of passing over it", () => {
    const text = JSON.stringify(patternDocument()).replace('"name"', '"__proto__":{"x":1},"name"');
    expect(faultOf(parsePattern(JSON.parse(text)))).toBe("__proto__: is not a key of this document.");
  });

  it("refuses nesting a thousand deep, and text that is not JSON, with one fault each", () => {
    const deep: unknown = JSON.parse(`${'{"a":'.repeat(1000)}1${"}".repeat(1000)}`);
    expect(faultOf(parsePattern({ ...patternDocument(), instructions: deep }))).toMatch(
      /^instructions.*: is nested too deep\.$/,
    );
    expect(readJson("{").ok).toBe(false);
    expect(readJson("[".repeat(200_000)).ok).toBe(false);
  });

  it("names the whole as $", () => {
    expect(faultOf(parsePattern(7))).toBe("$: should be an object.");
    expect(faultOf(parsePattern(null))).toBe("$: should be an object.");
  });
});

describe("a call document", () => {
  const call = callDocument([reader("a", { bust: 100 }), reader("b", { bust: 120 }, { size: "large" })]);

  it.each([
    [["testers", 1, "size"], "huge", "testers[1].size: there is no size “huge”."],
    [["testers", 1, "id"], "a", "testers[1].id: “a” appears twice in this list."],
    [["testers", 0, "readings", 0, "cm"], 0, "testers[0].readings[0].cm: must be above 0."],
    [
      ["testers", 0, "readings", 0, "measurement"],
      "hip",
      "testers[0].readings[0].measurement: there is no measurement “hip”.",
    ],
    [["testers", 0, "swatches", 0, "acrossCm"], 0, "testers[0].swatches[0].acrossCm: must be above 0."],
    [["testers", 0, "worked"], { width: 9.5 }, "testers[0].worked.width: must be a whole number."],
    [["testers", 0, "fit"], [{ area: "bust", scale: 3 }], "testers[0].fit[0].scale: must be −2, −1, 0, 1 or 2."],
    [["places", "large"], undefined, "places.large: is missing; a record by size names every size."],
    [["places", "large"], { least: 3, wanted: 2 }, "places.large.least: is 3, more than the 2 wanted."],
    [["pattern", "grading"], undefined, "pattern.grading.width: is missing; “Width” needs a number in every size."],
  ])("tells a fault at %j", (path, value, says) => {
    expect(faultOf(parseCall(withValue(call, path, value)))).toContain(says);
  });

  it("accepts the limits of the format, and reports what exceeds them", () => {
    const readings = [{ measurement: "bust", cm: 100 }];
    const many = (count: number) => Array.from({ length: count }, (_, index) => reader(`t-${index}`, {}, { readings }));
    expect(parseCall(callDocument(many(20_000)))).toMatchObject({ ok: true });
    expect(faultOf(parseCall(callDocument(many(20_001))))).toBe("testers: must hold at most 20000 testers.");
  });
});

describe("an applicants document", () => {
  const pattern = patternDocument();
  const document = {
    format: "sizewright/applicants@1",
    pattern,
    places: { small: { least: 1, wanted: 2 } },
    fitBy: ["bust"],
    applicants: [{ id: "ann", body: { bust: 92 }, prefers: ["small"], record: { finished: 2, dropped: 0 } }],
  };

  it("may leave out sizes without places", () => {
    expect(parseApplicants(document)).toMatchObject({ ok: true });
  });

  it.each([
    [["applicants", 0, "body"], {}, "applicants[0].body.bust: is missing; the fit depends on it."],
    [["applicants", 0, "locked"], "tall", "applicants[0].locked: there is no size “tall”."],
    [["fitBy", 0], "shoe", "fitBy[0]: there is no body measurement “shoe”."],
  ])("tells a fault at %j", (path, value, says) => {
    const parsed = parseApplicants(withValue(document, path, value));
    expect(parsed.ok ? "none" : parsed.faults.map((fault) => `${fault.path}: ${fault.says}`).join("\n")).toContain(
      says,
    );
  });
});

describe("a call document of many testers", () => {
  const testers = Array.from({ length: 1_000 }, (_, index) => reader(`tester-${index}`, {}));

  it("is read in short steps", () => {
    const steps = parseCallInSteps(callDocument(testers));
    let taken = 0;
    let step = steps.next();
    for (; !step.done; step = steps.next()) taken += 1;
    expect(taken).toBeGreaterThanOrEqual(40);
    expect(step.value).toEqual({ ok: true, document: callDocument(testers) });
  });

  it("tells of what is wrong beside its testers and of what is wrong in the last of them", () => {
    const faulty = { ...callDocument([...testers, reader("last", {}, { hours: -1 })]), format: "another" };
    expect(faultOf(parseCall(faulty))).toBe(
      'format: must be one of "sizewright/call@1", "sizewright/call@2".\ntesters[1000].hours: must be 0 or more.',
    );
  });
});

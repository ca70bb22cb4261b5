import { describe, expect, it } from "vitest";
import { changesOfForm } from "../../../../src/features/testing/report/draft-schema";
import { readForm } from "../../../../src/server/read-form";
import { carriedDecisions } from "../../../../src/features/testing/report/carried-decisions";
import { changedFields } from "../../../../src/features/testing/report/changed-fields";
import { countsByPiece } from "../../../../src/features/testing/report/steps/counts-by-piece";
import { patternDocument } from "../../../factories/pattern";

function form(was: Readonly<Record<string, string>>, entries: readonly (readonly [string, string])[]): FormData {
  const data = new FormData();
  data.set("testerId", "tester");
  data.set("was", JSON.stringify(was));
  data.set("$ACTION_REF_1", "");
  for (const [name, value] of entries) data.append(name, value);
  return data;
}

describe("a form that is sent without JavaScript", () => {
  it("comes to the fields that differ, a box that is no longer ticked among them", () => {
    const was = { hours: "12", asWritten: "yes", "fit.bust.says": "one\ntwo", "swatch.1.rows": "25" };
    const sent = form(was, [
      ["hours", "13"],
      ["asWritten", ""],
      ["changed.bust", ""],
      ["changed.bust", "yes"],
      ["fit.bust.says", "one\r\ntwo"],
    ]);
    expect(changesOfForm(readForm(sent))).toEqual([
      { field: "hours", was: "12", becomes: "13" },
      { field: "asWritten", was: "yes", becomes: "" },
      { field: "changed.bust", was: "", becomes: "yes" },
    ]);
  });

  it("takes in what the pressed button changes, over what stands in the form", () => {
    const sent = form({ "swatch.2.rows": "25" }, [
      ["swatch.2.rows", "26"],
      ["also", JSON.stringify({ "swatch.2.rows": null, "swatch.1.used": "yes" })],
    ]);
    expect(changesOfForm(readForm(sent))).toEqual([
      { field: "swatch.2.rows", was: "25", becomes: null },
      { field: "swatch.1.used", was: "", becomes: "yes" },
    ]);
  });
});

describe("what a new version carries over", () => {
  it("is the word on each item that stands unchanged, wherever it stands now, each once", () => {
    const reading = (cm: number) => ({ measurement: "bust", cm });
    const report = (readings: readonly number[]) => ({
      ...{ size: "small", swatches: [], yarn: [] },
      readings: readings.map(reading),
    });
    const decisions = [0, 1, 2].map((position) => ({ part: "readings", position, decision: "keep" }) as const);
    // 100 stands at 1 now, the second 100 is gone, 102 became 103.
    expect(carriedDecisions(decisions, { from: report([100, 100, 102]), to: report([99, 100, 103]) })).toEqual([
      { part: "readings", position: 1, decision: "keep" },
    ]);
  });

  it("counts a field as changed where its text differs, blank or absent being the same", () => {
    expect(changedFields({ a: "1", b: " ", c: "3 " }, { c: "3", d: "4" })).toEqual(["a", "d"]);
  });
});

describe("counts of a report", () => {
  it("stand under the piece that meets them first, each once", () => {
    const section = { from: "width", to: "width", rows: "height" };
    const piece = { fabric: "main", made: 1, yarn: "main", sections: [section] };
    const pattern = patternDocument({
      pieces: [
        { ...piece, id: "back", label: "Back" },
        { ...piece, id: "front", label: "Front" },
      ],
    });
    const names = countsByPiece(pattern).map(({ label, counts }) => [label, ...counts.map(({ id }) => id)]);
    expect(names).toEqual([["Back", "width", "height"]]);
    const none = countsByPiece(patternDocument()).map(({ label, counts }) => [label, counts.length]);
    expect(none).toEqual([["Counts", 2]]);
  });
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { markLines, type MarkedLine } from "../../../../src/features/patterns/compare/marked-lines";

it("marks the words of a line that were changed", () => {
  expect(markLines("Chain 78.\nTurn.", "Chain 80.\nTurn.")).toEqual([
    {
      mark: "changed",
      parts: [
        { mark: "same", text: "Chain " },
        { mark: "removed", text: "78" },
        { mark: "added", text: "80" },
        { mark: "same", text: "." },
      ],
    },
    { mark: "same", text: "Turn." },
  ]);
});

it("marks lines that are new or gone, and finds a changed line behind a new one", () => {
  expect(markLines("Work 10 rows even.", "Change to the smaller hook now:\nWork 12 rows even.")).toMatchObject([
    { mark: "added", text: "Change to the smaller hook now:" },
    { mark: "changed" },
  ]);
  expect(markLines("One.\nTwo.", "One.")).toEqual([
    { mark: "same", text: "One." },
    { mark: "removed", text: "Two." },
  ]);
});

it("does not take two lines for one that have little in common", () => {
  expect(markLines("Fasten off.", "Block to size.")).toEqual([
    { mark: "removed", text: "Fasten off." },
    { mark: "added", text: "Block to size." },
  ]);
});

it("leaves out what is the same further than two lines from a change", () => {
  const lines = Array.from({ length: 20 }, (_, index) => `Row ${index + 1}.`);
  const changed = lines.with(9, "Begin the armhole.");
  expect(markLines(lines.join("\n"), changed.join("\n"))?.map(({ mark }) => mark)).toEqual([
    "skipped",
    "same",
    "same",
    "removed",
    "added",
    "same",
    "same",
    "skipped",
  ]);
  expect(markLines(lines.join("\n"), changed.join("\n"))?.[0]).toEqual({ mark: "skipped", lines: 7 });
});

it("takes a text that was not there, or is gone, as wholly new or wholly gone", () => {
  expect(markLines("", "One.\nTwo.")?.map(({ mark }) => mark)).toEqual(["added", "added"]);
  expect(markLines("One.\nTwo.", "")?.map(({ mark }) => mark)).toEqual(["removed", "removed"]);
});

it("reads lines that end as Windows writes them", () => {
  expect(markLines("One.\r\nTwo.", "One.\nTwo.")).toEqual([{ mark: "skipped", lines: 2 }]);
});

it("gives up on texts that have nothing in common, in little time", () => {
  const text = (word: string) => Array.from({ length: 5_000 }, (_, index) => `${word} ${index}`).join("\n");
  expect(markLines(text("old"), text("new"))).toBeNull();
});

/** One side of what is shown, from the lines that are not left out. */
function side(lines: readonly MarkedLine[], gone: "added" | "removed"): string[] {
  return lines.flatMap((line) => {
    if (line.mark === "skipped" || line.mark === gone) return [];
    if (line.mark !== "changed") return [line.text];
    return [line.parts.flatMap(({ mark, text }) => (mark === gone ? [] : [text])).join("")];
  });
}

it("shows both texts whole, whatever they are", () => {
  const line = fc.array(fc.constantFrom("row", "dc", "2", "of", "even"), { minLength: 1, maxLength: 4 });
  // Short enough that nothing is left out: every line is near a change, or the texts are equal.
  const text = fc.array(line, { minLength: 1, maxLength: 3 }).map((lines) => lines.map((words) => words.join(" ")));
  let ran = 0;
  fc.assert(
    fc.property(text, text, (was, becomes) => {
      const lines = markLines(was.join("\n"), becomes.join("\n"));
      if (was.join("\n") === becomes.join("\n")) return;
      ran += 1;
      expect(side(lines ?? [], "added")).toEqual(was);
      expect(side(lines ?? [], "removed")).toEqual(becomes);
    }),
    { seed: Number(process.env.SEED), numRuns: 300 },
  );
  expect(ran).toBeGreaterThan(200);
});

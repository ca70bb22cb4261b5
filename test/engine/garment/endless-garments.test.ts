import { describe, expect, it } from "vitest";
import { garmentPattern, type Step } from "../../factories/garment-pattern";
import { outlined, stitchRuns } from "./outlined";

const castOn = (part: string, stitches = 40): Step => ({
  ...{ id: `${part}-start`, in: part, do: "start", how: "cast-on", stitches, worked: "flat" },
});
const end = (part: string): Step => ({ id: `${part}-end`, in: part, do: "end", how: "bind-off", edge: `${part}-top` });

describe("a garment that never comes to an end", () => {
  it("has a fault at each step that waits for itself, and the rest is worked", () => {
    const pickUp = (part: string, edge: string): Step => ({
      ...{ id: part, in: part, do: "start", how: "pick-up", stitches: 10, worked: "flat", along: [{ edge }] },
    });
    const { messages, piece } = outlined(
      garmentPattern({
        pieces: [{ id: "front" }, { id: "one" }, { id: "two" }],
        steps: [
          castOn("front"),
          { in: "front", do: "work", rows: 3 },
          end("front"),
          pickUp("one", "two-top"),
          pickUp("two", "one-top"),
          end("one"),
          end("two"),
        ],
      }),
    );
    expect(messages).toEqual(
      ["one", "two", "one-end", "two-end"].map(
        (id) => `${id}: It waits for a step that itself waits for this one. Check which parts and edges they need.`,
      ),
    );
    expect(stitchRuns(piece("front").steps)).toEqual(["40 × 3"]);
  });

  it("of 10 000 steps is worked as far as 100 000 rows go, and says where it stopped", () => {
    const many = Array.from({ length: 9_998 }, (_, index): Step => ({
      id: `w${index}`,
      in: "front",
      do: "work",
      rows: 11,
    }));
    const { messages, piece } = outlined(
      garmentPattern({ pieces: [{ id: "front" }], steps: [castOn("front"), ...many, end("front")] }),
    );
    // 9090 steps of 11 rows are 99 990 rows; the next has room for 10 of its 11.
    expect(messages).toEqual([
      "w9090: The garment has more than 100000 rows, and the rest is left out. Check its rows.",
    ]);
    expect(piece("front").steps).toHaveLength(100_000);
  });

  it("of 10 000 parts that are joined is worked whole", () => {
    const parts = Array.from({ length: 4_999 }, (_, index) => `p${index}`);
    const { messages } = outlined(
      garmentPattern({
        pieces: [{ id: "front", parts }],
        steps: [
          ...parts.map((part) => castOn(part, 2)),
          ...parts.slice(1).map((part, index): Step => ({
            ...{ in: "all", do: "join", as: `j${index}`, worked: "flat" },
            parts: [{ part: index === 0 ? "p0" : `j${index - 1}` }, { part }],
          })),
          { in: "j4997", do: "work", rows: 2 },
          { in: "j4997", do: "end", how: "bind-off", edge: "top" },
        ],
      }),
    );
    expect(messages).toEqual([]);
  });
});

import { expect, it } from "vitest";
import { chooseRevisions } from "../../../../src/features/patterns/compare/choose-revisions";

const FIVE = [5, 4, 3, 2, 1];

it.each([
  ["nothing asked: the newest and the one before", {}, 4, 5],
  ["both asked", { from: "2", to: "5" }, 2, 5],
  ["backwards, as after a swap", { from: "5", to: "2" }, 5, 2],
  ["only the later: the one before it", { to: "3" }, 2, 3],
  ["only the earlier: the newest", { from: "2" }, 2, 5],
  ["the first has none before it: the newest", { to: "1" }, 5, 1],
  ["empty texts, as an empty form sends", { from: "", to: "" }, 4, 5],
])("%s", (_what, asked, from, to) => {
  expect(chooseRevisions(FIVE, asked)).toEqual({ from, to, says: null });
});

it("says so where both are the same, and keeps them chosen", () => {
  const says = "Both are revision 3. Choose two different ones.";
  expect(chooseRevisions(FIVE, { from: "3", to: "3" })).toEqual({ from: 3, to: 3, says });
});

it.each(["9", "0", "-1", "2.0", "02", "two", "1e0", "__proto__"])("says that there is no revision %s", (from) => {
  const says = `There is no revision “${from}” of this pattern. Choose from 1 to 5.`;
  expect(chooseRevisions(FIVE, { from })).toEqual({ from: null, to: 5, says });
  expect(chooseRevisions(FIVE, { to: from }).says).toBe(says);
});

it("tells a long text in short", () => {
  expect(chooseRevisions(FIVE, { from: "x".repeat(500) }).says).toHaveLength(
    "There is no revision “” of this pattern. Choose from 1 to 5.".length + 21,
  );
});

it("has nothing to compare where there is one revision", () => {
  const says = "There is only one revision so far, so there is nothing to compare.";
  expect(chooseRevisions([1], { from: "1" })).toEqual({ from: null, to: 1, says });
});

import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { AskedField, SaveAnswer } from "@/features/reports/save-answer";
import type { FieldChange } from "@/features/reports/merge-fields";
import { FieldKeeper } from "@/features/reports/components/keeping/field-keeper";

/** A browser's storage; `refuses` as in a private window. */
function storage(refuses = false): Record<string, unknown> {
  const refuse = () => {
    throw new Error("refused");
  };
  const hidden = (value: unknown) => ({ value, enumerable: false });
  const store: Record<string, string> = {};
  return Object.defineProperties(store, {
    getItem: hidden(refuses ? refuse : (key: string) => store[key] ?? null),
    setItem: hidden(refuses ? refuse : (key: string, text: string) => (store[key] = text)),
    removeItem: hidden(refuses ? refuse : (key: string) => delete store[key]),
  });
}

const KEPT: SaveAnswer = { status: "saved", asked: [] };

/** A server that answers in turn, `null` for a lost connection, and notes what it got. */
function server(...answers: (SaveAnswer | null)[]) {
  const got: Record<string, string | null>[] = [];
  const send = (_testerId: string, changes: readonly FieldChange[]): Promise<SaveAnswer> => {
    got.push(Object.fromEntries(changes.map(({ field, becomes }) => [field, becomes])));
    const answer = answers.length > 0 ? answers.shift() : KEPT;
    return answer ? Promise.resolve(answer) : Promise.reject(new TypeError("Failed to fetch"));
  };
  return { got, send };
}

let number = 0;
const someTester = () => `tester-${(number += 1)}`;

/** A keeper of a form that stands on a page. */
function begin(...given: ConstructorParameters<typeof FieldKeeper>): FieldKeeper {
  const keeper = new FieldKeeper(...given);
  keeper.start();
  return keeper;
}

const settled = (ms = 1_000) => vi.advanceTimersByTimeAsync(ms);

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("localStorage", storage());
  vi.stubGlobal("window", new EventTarget());
  vi.stubGlobal("document", new EventTarget());
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("keeping fields", () => {
  it("sends what was typed once, after a pause", async () => {
    const { got, send } = server();
    const keeper = begin(someTester(), send);
    for (const text of ["3", "38", "38,5"]) keeper.type("hours", text);
    expect(keeper.keeping).toMatchObject({ state: "saving", waiting: 1 });
    await settled();
    expect(got).toEqual([{ hours: "38,5" }]);
    expect(keeper.keeping).toMatchObject({ state: "saved", waiting: 0 });
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(Object.keys(localStorage)).toEqual([]);
  });

  it("holds it on the device while there is no connection, and sends it once when it comes back", async () => {
    const { got, send } = server(null, null);
    const keeper = begin(someTester(), send);
    keeper.type("hours", "12");
    await settled();
    expect(keeper.keeping).toMatchObject({ state: "offline", waiting: 1, outlives: true });
    expect(Object.values(localStorage)).toEqual(['["","12"]']);
    keeper.type("asWritten", "yes");
    await settled();
    window.dispatchEvent(new Event("online"));
    await settled(600_000);
    expect(got.at(-1)).toEqual({ hours: "12", asWritten: "yes" });
    expect(got).toHaveLength(3);
    expect(keeper.keeping.state).toBe("saved");
  });

  it("sends on the next visit what a closed tab left", async () => {
    const tester = someTester();
    const first = begin(tester, server(null).send);
    first.type("hours", "12");
    await settled();
    const { got, send } = server();
    const later = new FieldKeeper(tester, send);
    later.start();
    expect(later.textOf("hours")).toBe("12");
    await settled();
    expect(got).toEqual([{ hours: "12" }]);
    // Another tester's pages on the same device have nothing of it.
    const other = server();
    new FieldKeeper(someTester(), other.send).start();
    await settled();
    expect(other.got).toEqual([]);
  });

  it("never takes back what is typed while an answer is on its way", async () => {
    const { got, send } = server();
    const keeper = begin(someTester(), send);
    keeper.type("hours", "1");
    keeper.flush();
    keeper.type("hours", "12");
    await settled(0);
    keeper.learn({ hours: "1" });
    expect(keeper.textOf("hours")).toBe("12");
    await settled(2_000);
    expect(got).toEqual([{ hours: "1" }, { hours: "12" }]);
  });

  it("works in a browser that stores nothing, and says that the page must stay open", async () => {
    vi.stubGlobal("localStorage", storage(true));
    const { got, send } = server(null);
    const keeper = begin(someTester(), send);
    keeper.type("hours", "12");
    await settled();
    expect(keeper.keeping).toMatchObject({ state: "offline", outlives: false });
    await settled(60_000);
    expect(got.at(-1)).toEqual({ hours: "12" });
    expect(keeper.keeping.state).toBe("saved");
  });

  it("asks where another device came before, keeps the others, and sends the tester's choice", async () => {
    const clash: AskedField = { field: "hours", label: "Hours", there: "39", here: "38", message: "…" };
    const { got, send } = server({ status: "saved", asked: [clash] });
    const keeper = begin(someTester(), send);
    keeper.type("hours", "38");
    keeper.type("asWritten", "yes");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(keeper.keeping).toMatchObject({ state: "saved", waiting: 0, asked: [clash] });
    expect(keeper.choose(clash, "here")).toBe("38");
    await settled();
    expect(got.at(-1)).toEqual({ hours: "38" });
    expect(keeper.keeping.asked).toEqual([]);
  });

  it("leaves the other device's text if the tester chooses it", async () => {
    const clash: AskedField = { field: "hours", label: "Hours", there: "39", here: "38", message: "…" };
    const { got, send } = server({ status: "saved", asked: [clash] });
    const keeper = begin(someTester(), send);
    keeper.type("hours", "38");
    await settled();
    expect(keeper.choose(clash, "there")).toBe("39");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(Object.keys(localStorage)).toEqual([]);
  });

  it("says that the call is closed, and keeps what was typed", async () => {
    const message = "This call is closed, so nothing can be added to it.";
    const { got, send } = server({ status: "failed", message, isFinal: true, asked: [] });
    const keeper = begin(someTester(), send);
    keeper.type("hours", "12");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(keeper.keeping).toMatchObject({ state: "closed", message });
    expect(keeper.textOf("hours")).toBe("12");
  });
});

import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { AskedField, SaveAnswer } from "../../../../../src/features/testing/report/save-answer";
import type { FieldChange } from "../../../../../src/features/testing/report/merge-fields";
import { FieldAutosave } from "../../../../../src/features/testing/report/autosave/field-autosave";

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

/** A autosave of a form that stands on a page. */
function begin(...given: ConstructorParameters<typeof FieldAutosave>): FieldAutosave {
  const autosave = new FieldAutosave(...given);
  autosave.start();
  return autosave;
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

describe("status fields", () => {
  it("sends what was typed once, after a pause", async () => {
    const { got, send } = server();
    const autosave = begin(someTester(), send);
    for (const text of ["3", "38", "38,5"]) autosave.type("hours", text);
    expect(autosave.status).toMatchObject({ state: "saving", waiting: 1 });
    await settled();
    expect(got).toEqual([{ hours: "38,5" }]);
    expect(autosave.status).toMatchObject({ state: "saved", waiting: 0 });
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(Object.keys(localStorage)).toEqual([]);
  });

  it("holds it on the device while there is no connection, and sends it once when it comes back", async () => {
    const { got, send } = server(null, null);
    const autosave = begin(someTester(), send);
    autosave.type("hours", "12");
    await settled();
    expect(autosave.status).toMatchObject({ state: "offline", waiting: 1, outlives: true });
    expect(Object.values(localStorage)).toEqual(['["","12"]']);
    autosave.type("asWritten", "yes");
    await settled();
    window.dispatchEvent(new Event("online"));
    await settled(600_000);
    expect(got.at(-1)).toEqual({ hours: "12", asWritten: "yes" });
    expect(got).toHaveLength(3);
    expect(autosave.status.state).toBe("saved");
  });

  it("sends on the next visit what a closed tab left", async () => {
    const tester = someTester();
    const first = begin(tester, server(null).send);
    first.type("hours", "12");
    await settled();
    const { got, send } = server();
    const later = new FieldAutosave(tester, send);
    later.start();
    expect(later.textOf("hours")).toBe("12");
    await settled();
    expect(got).toEqual([{ hours: "12" }]);
    // Another tester's pages on the same device have nothing of it.
    const other = server();
    new FieldAutosave(someTester(), other.send).start();
    await settled();
    expect(other.got).toEqual([]);
  });

  it("never takes back what is typed while an answer is on its way", async () => {
    const { got, send } = server();
    const autosave = begin(someTester(), send);
    autosave.type("hours", "1");
    autosave.flush();
    autosave.type("hours", "12");
    await settled(0);
    autosave.learn({ hours: "1" });
    expect(autosave.textOf("hours")).toBe("12");
    await settled(2_000);
    expect(got).toEqual([{ hours: "1" }, { hours: "12" }]);
  });

  it("works in a browser that stores nothing, and says that the page must stay open", async () => {
    vi.stubGlobal("localStorage", storage(true));
    const { got, send } = server(null);
    const autosave = begin(someTester(), send);
    autosave.type("hours", "12");
    await settled();
    expect(autosave.status).toMatchObject({ state: "offline", outlives: false });
    await settled(60_000);
    expect(got.at(-1)).toEqual({ hours: "12" });
    expect(autosave.status.state).toBe("saved");
  });

  it("asks where another device came before, keeps the others, and sends the tester's choice", async () => {
    const clash: AskedField = { field: "hours", label: "Hours", there: "39", here: "38", message: "…" };
    const { got, send } = server({ status: "saved", asked: [clash] });
    const autosave = begin(someTester(), send);
    autosave.type("hours", "38");
    autosave.type("asWritten", "yes");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(autosave.status).toMatchObject({ state: "saved", waiting: 0, asked: [clash] });
    expect(autosave.choose(clash, "here")).toBe("38");
    await settled();
    expect(got.at(-1)).toEqual({ hours: "38" });
    expect(autosave.status.asked).toEqual([]);
  });

  it("leaves the other device's text if the tester chooses it", async () => {
    const clash: AskedField = { field: "hours", label: "Hours", there: "39", here: "38", message: "…" };
    const { got, send } = server({ status: "saved", asked: [clash] });
    const autosave = begin(someTester(), send);
    autosave.type("hours", "38");
    await settled();
    expect(autosave.choose(clash, "there")).toBe("39");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(Object.keys(localStorage)).toEqual([]);
  });

  it("says that the call is closed, and keeps what was typed", async () => {
    const message = "This call is closed, so nothing can be added to it.";
    const { got, send } = server({ status: "failed", message, isFinal: true, asked: [] });
    const autosave = begin(someTester(), send);
    autosave.type("hours", "12");
    await settled(600_000);
    expect(got).toHaveLength(1);
    expect(autosave.status).toMatchObject({ state: "closed", message });
    expect(autosave.textOf("hours")).toBe("12");
  });
});

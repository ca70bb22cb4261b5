import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sayAction } from "@/features/testing/questions/say-action";
import { answerFormSchema, questionFormSchema, troubleFormSchema } from "@/features/testing/questions/schema";
import { AppError } from "@/server/errors";

function form(entries: readonly (readonly [string, string])[]): FormData {
  const data = new FormData();
  for (const [name, value] of entries) data.append(name, value);
  return data;
}

const at = [
  ["testerId", randomUUID()],
  ["place", "1-aa"],
  ["formKey", randomUUID()],
] as const;
const question = { schema: questionFormSchema, fields: ["asks"] };

describe("free text in a form", () => {
  it("is trimmed and otherwise as written: line breaks, right to left, emoji", async () => {
    const heard: string[] = [];
    const ask = sayAction(question, ({ asks }) => {
      heard.push(asks);
      return Promise.resolve();
    });
    expect(await ask(undefined, form([...at, ["asks", "  למה?\r\n🧶 \n"]]))).toEqual({ status: "sent" });
    expect(heard).toEqual(["למה?\n🧶"]);
  });

  it("may have 2,000 characters; a longer one comes back whole, with an error", async () => {
    const ask = sayAction(question, () => Promise.resolve());
    const lines = `${"x".repeat(999)}\r\n${"y".repeat(1000)}`;
    expect(await ask(undefined, form([...at, ["asks", lines]]))).toEqual({ status: "sent" });
    const long = "x".repeat(2_001);
    expect(await ask(undefined, form([...at, ["asks", long]]))).toEqual({
      status: "refused",
      errors: { asks: "This has 2,001 characters; the limit is 2,000. Shorten it, or send it in two parts." },
      message: null,
      typed: { asks: long },
    });
  });

  it("is required unless it is optional", async () => {
    const tell = sayAction({ schema: troubleFormSchema, fields: ["happened", "did"] }, () => Promise.resolve());
    expect(await tell(undefined, form([...at, ["happened", " "], ["did", "Ripped"]]))).toEqual({
      status: "refused",
      errors: { happened: "Say in a few words what went wrong here." },
      message: null,
      typed: { happened: " ", did: "Ripped" },
    });
    expect(await tell(undefined, form([...at, ["happened", "It fell"], ["did", ""]]))).toEqual({ status: "sent" });
  });

  it("comes back with one message if the page is out of date, or it cannot be stored now", async () => {
    const ask = sayAction(question, () => Promise.reject(new AppError("closed")));
    const closed = await ask(undefined, form([...at, ["asks", "Why?"]]));
    expect(closed).toMatchObject({ message: new AppError("closed").message, typed: { asks: "Why?" } });
    const old = await ask(undefined, form([["asks", "Why?"]]));
    expect(old).toMatchObject({ errors: {}, typed: { asks: "Why?" } });
    expect(old).toHaveProperty("message", expect.stringContaining("out of date"));
  });

  it("is refused if it cannot be stored", async () => {
    const ask = sayAction(question, () => Promise.resolve());
    const refused = await ask(undefined, form([...at, ["asks", "a\u0000b"]]));
    expect(refused).toMatchObject({
      errors: { asks: "This contains a character that cannot be stored. Remove it and send again." },
    });
  });

  it("answers one question or several, over the answer that was read or over none", () => {
    const [one, other] = [randomUUID(), randomUUID()];
    const given = { callId: "c", questions: `${one} ${other}`, seenAt: "", answer: "Yes" };
    expect(answerFormSchema.parse(given)).toEqual({ ...given, questions: [one, other], seenAt: null });
    const seenAt = "2026-11-26T02:00:00.123Z";
    expect(answerFormSchema.parse({ ...given, seenAt }).seenAt).toEqual(new Date(seenAt));
    expect(answerFormSchema.safeParse({ ...given, questions: "1" }).success).toBe(false);
  });
});

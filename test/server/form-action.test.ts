import { describe, expect, it } from "vitest";
import { z } from "zod";
import { signUpSchema } from "@/features/accounts/schema";
import { newPatternSchema } from "../../src/features/patterns/new/new-pattern-schema";
import { formAction } from "@/server/form-action";
import { formNames, parseForm, readForm } from "@/server/read-form";

const WHOLE = { name: "Invented Designer", email: "a@example.org", password: "a long enough password" };

function formOf(entries: Iterable<readonly [string, string]>): FormData {
  const form = new FormData();
  for (const [name, text] of entries) form.append(name, text);
  return form;
}

const greet = formAction(signUpSchema, ({ name, email }) => Promise.resolve({ "": [`${name} ${email}`] }), [
  "password",
]);

describe("a form with fields that its page never had", () => {
  it.each([
    "a[400000000]",
    "name[400000000]",
    "__proto__",
    "__proto__.polluted",
    "constructor",
    "constructor.prototype.polluted",
    "toString",
    `a${"[b]".repeat(1_000)}`,
    `a${".b".repeat(1_000)}`,
    "a..b[",
    "__intent__",
    "__state__",
  ])("is read as if %s were not there", async (name) => {
    const answer = await greet(undefined, formOf([...Object.entries(WHOLE), [name, "1"]]));
    expect(answer.error).toEqual({ "": ["Invented Designer a@example.org"] });
    expect(JSON.stringify(answer.initialValue)).not.toContain("polluted");
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  it("is refused in a sentence where it has 40 000 of them, at once", async () => {
    const many = Array.from({ length: 40_000 }, (_, at) => [`a${at}`, "1"] as const);
    const begun = performance.now();
    const answer = await greet(undefined, formOf([...many, ...Object.entries(WHOLE)]));
    // The work is bounded; the time, which took 9 s before, is only looked at in the large.
    expect(performance.now() - begun).toBeLessThan(3_000);
    expect(answer.error?.[""]?.[0]).toContain("too much to send at once");
  });

  it("is refused where its texts are longer than all of our forms hold together", async () => {
    const answer = await greet(undefined, formOf([...Object.entries(WHOLE), ["name", "x".repeat(5_000_000)]]));
    expect(answer.error?.[""]?.[0]).toContain("256 kB");
  });
});

describe("reading a form", () => {
  it("drops what the schema does not name, and files", () => {
    const schema = z.object({ callId: z.string(), role: z.string().default("none") });
    const form = formOf([
      ["callId", "first"],
      ["callId", "last"],
      ["elsewhere", "x"],
      ["$ACTION_ID", "x"],
    ]);
    form.append("role", new File(["x"], "role.txt"));
    expect(parseForm(schema, form)).toEqual({ callId: "last", role: "none" });
    expect([...readForm(form).keys()]).toEqual(["callId", "elsewhere"]);
  });

  it("knows every name under which a form of nested parts and lists holds its fields", () => {
    expect(formNames(signUpSchema)).toEqual(["name", "email", "password", "next"]);
    const names = formNames(newPatternSchema);
    expect(names).toEqual(expect.arrayContaining(["formKey", "own.sizes", "fabric.toolMm", "fabric.worked"]));
    expect(names.filter((name) => /^tables\.[a-z0-9-]+\.measurements$/.test(name)).length).toBeGreaterThan(0);
  });
});

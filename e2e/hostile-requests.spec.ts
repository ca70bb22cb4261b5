import { randomUUID } from "node:crypto";
import { request as httpRequest } from "node:http";
import { z } from "zod";
import { findAction } from "./access-answers";
import { makeDesigner, sessionCookie } from "./designer";
import { expect, test } from "./fixtures";
import { makeOpenCall } from "./make-open-call";

/** Long for an answer, for other tests run meanwhile, and short beside the 19 seconds that such a form once took. */
const SOON_MS = 15_000;

/** Everybody tries an address of their own, for so many tries at one are refused. */
const whole = () => ({
  ...{ name: "Invented Designer", password: "short", next: "/" },
  email: `nobody-${randomUUID()}@example.org`,
});

interface Answer {
  readonly status: number;
  readonly text: string;
}

/** What the hidden inputs of a page's only form hold, by which Next knows its action without scripts. */
async function hiddenFields(address: string): Promise<readonly (readonly [string, string])[]> {
  const html = await (await fetch(address)).text();
  const inputs = html.matchAll(/<input type="hidden" name="(\$ACTION[^"]*)"(?: value="([^"]*)")?/g);
  return Array.from(inputs, ([, name = "", value = ""]) => [name, value.replaceAll("&quot;", '"')] as const);
}

function formOf(entries: Iterable<readonly [string, string]>): FormData {
  const form = new FormData();
  for (const [name, text] of entries) form.append(name, text);
  return form;
}

/** Sends a form as a browser without scripts does, and looks at the site meanwhile. */
async function send(address: string, form: FormData): Promise<Answer> {
  const begun = performance.now();
  const sent = fetch(address, { method: "POST", body: form, redirect: "manual" });
  const others = await fetch(new URL("/live", address));
  expect(others.status).toBe(200);
  const answer = await sent;
  const text = await answer.text();
  expect(performance.now() - begun).toBeLessThan(SOON_MS);
  return { status: answer.status, text };
}

const HOSTILE: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  "an index of 400 000 000": [["a[400000000]", "1"]],
  "an index of 10 000 000 in a field of the form": [["email[10000000]", "1"]],
  "names of what every object has": [
    ["__proto__", "1"],
    ["__proto__.polluted", "1"],
    ["constructor.prototype.polluted", "1"],
  ],
  "a name nested a thousand deep": [[`a${"[b]".repeat(1_000)}`, "1"]],
};

test.describe.configure({ mode: "serial" });

for (const page of ["sign-up", "sign-in"]) {
  for (const [what, fields] of Object.entries(HOSTILE)) {
    test(`a form of ${page} with ${what} is answered as if it were not there`, async ({ baseURL }) => {
      const address = new URL(`/${page}`, baseURL).href;
      const form = formOf([...(await hiddenFields(address)), ...Object.entries(whole()), ...fields]);
      const { status, text } = await send(address, form);
      expect(status).toBe(200);
      expect(text).toContain(page === "sign-up" ? "A password has at least 10 characters" : "don’t match");
    });
  }

  test(`a form of ${page} with more than it can hold is refused at once`, async ({ baseURL }) => {
    const address = new URL(`/${page}`, baseURL).href;
    const hidden = await hiddenFields(address);
    expect(hidden.length).toBeGreaterThan(0);
    const fields = (count: number) => Array.from({ length: count }, (_, at) => [`a${at}`, ""] as const);
    const some = await send(address, formOf([...hidden, ...Object.entries(whole()), ...fields(2_000)]));
    expect(some.text).toContain("too much to send at once");
    expect(await send(address, formOf([...hidden, ...fields(40_000)]))).toMatchObject({ status: 413 });
    expect(await send(address, formOf([...hidden, ["email", "x".repeat(5_000_000)]]))).toMatchObject({ status: 413 });
  });
}

test("an address that takes documents takes no forms of their size", async ({ baseURL }) => {
  const address = new URL("/patterns/new/document", baseURL).href;
  const form = formOf(Array.from({ length: 40_000 }, (_, at) => [`a${at}`, ""] as const));
  expect(await send(address, form)).toMatchObject({ status: 413 });
});

test("content whose size is not said is refused", async ({ baseURL }) => {
  const status = await new Promise((resolve, reject) => {
    const asked = httpRequest(new URL("/sign-in", baseURL), { method: "POST" }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    });
    asked.on("error", reject);
    asked.setHeader("Transfer-Encoding", "chunked");
    asked.end("a=b");
  });
  expect(status).toBe(411);
});

test("what a script hands an action is refused by its schema, however it is nested", async ({ baseURL }) => {
  const cookie = await sessionCookie(await makeDesigner());
  const { id } = findAction("patterns/actions.ts saveDraftEdits");
  const hostile = [
    "[".repeat(100_000) + "]".repeat(100_000),
    '[{"__proto__":{"polluted":1}},{}]',
    '["$1","$K9"]',
    "[[[]",
  ];
  for (const body of hostile) {
    const begun = performance.now();
    const answer = await fetch(new URL("/patterns", baseURL), {
      method: "POST",
      headers: {
        Cookie: `${cookie.name}=${cookie.value}`,
        "Next-Action": id,
        "Content-Type": "text/plain;charset=UTF-8",
        Accept: "text/x-component",
      },
      body,
    });
    await answer.text();
    expect(performance.now() - begun).toBeLessThan(SOON_MS);
  }
  expect((await fetch(new URL("/live", baseURL))).status).toBe(200);
});

test("a hundred people at once are all shown an open call, its form and the way in", async ({ baseURL }) => {
  const callId = await makeOpenCall(await makeDesigner());
  for (const path of [`/open-calls/${callId}`, `/open-calls/${callId}/apply`, "/sign-in"]) {
    const asked = Array.from({ length: 100 }, async () => {
      const answer = await fetch(new URL(path, baseURL));
      await answer.text();
      return z.number().parse(answer.status);
    });
    const answers = await Promise.all(asked);
    expect([path, answers.filter((status) => status !== 200)]).toEqual([path, []]);
  }
});

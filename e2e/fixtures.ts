import { expect, test as base } from "@playwright/test";
import { z } from "zod";
import { makeDesigner, signInByCookie, type Designer } from "./designer";

interface Fixtures {
  /** A person of this test's own, signed in on its page. */
  designer: Designer;
  /** Console errors that a test brings about on purpose. */
  expectedErrors: RegExp | null;
  noConsoleErrors: void;
}

/** A browser test: it makes its own data, and an error on the console fails it. */
export const test = base.extend<Fixtures>({
  // eslint-plugin-react-hooks takes a function of this name for React's.
  baseURL: async ({}, provide) => provide(z.string().parse(process.env.NEXTAUTH_URL)),
  expectedErrors: [null, { option: true }],
  designer: async ({ context }, provide) => {
    const designer = await makeDesigner();
    await signInByCookie(context, designer);
    await provide(designer);
  },
  noConsoleErrors: [
    async ({ page, expectedErrors }, provide) => {
      const errors: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error") errors.push(message.text());
      });
      page.on("pageerror", ({ message }) => errors.push(message));
      await provide();
      expect(errors.filter((error) => expectedErrors?.test(error) !== true)).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

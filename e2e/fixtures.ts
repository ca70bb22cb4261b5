import { expect, test as base } from "@playwright/test";
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
        // What Next fetches ahead of a click may fail, as where the server is stopped; the click itself tells then.
        const isAhead =
          message.text().startsWith("Failed to load resource") && message.location().url.includes("_rsc=");
        if (message.type() === "error" && !isAhead) errors.push(`${message.text()} ${message.location().url}`);
      });
      page.on("pageerror", ({ message }) => errors.push(message));
      await provide();
      expect(errors.filter((error) => expectedErrors?.test(error) !== true)).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

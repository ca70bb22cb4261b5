import { defineConfig } from "@playwright/test";
import { CHROMIUM_OPTIONS } from "./test/install-chromium";

/** Outside CI, which has to stay short: `npm run journeys`. */
const LONG = [
  ...["a-whole-call.spec.ts", "accessibility.spec.ts", "database-unavailable.spec.ts"],
  ...["learning.spec.ts", "mail.spec.ts", "tester-looks.spec.ts"],
];

export default defineConfig({
  testDir: "e2e",
  globalSetup: "./e2e/global-setup.ts",
  fullyParallel: true,
  forbidOnly: true,
  // On two cores: tests wait for people’s pauses, the worker and mail, so that a third finds room.
  workers: 3,
  timeout: 90_000,
  expect: { timeout: 30_000 },
  reporter: [["list"]],
  use: {
    // Set by the global set-up, which has the server choose a free port.
    baseURL: process.env.NEXTAUTH_URL,
    locale: "en-GB",
    timezoneId: "Pacific/Chatham",
    screenshot: "only-on-failure",
    launchOptions: CHROMIUM_OPTIONS,
  },
  projects: [
    // Applicants and testers come by phone, and nothing is narrower than the form that signs in.
    {
      name: "desktop",
      testIgnore: [
        ...LONG,
        "apply.spec.ts",
        "invited.spec.ts",
        "news.spec.ts",
        "open-call.spec.ts",
        "photos.spec.ts",
        "questions.spec.ts",
        "reading.spec.ts",
        "report.spec.ts",
        "report-conflict.spec.ts",
        "report-extras.spec.ts",
        "report-taps.spec.ts",
        "sign-in.spec.ts",
        "thanks.spec.ts",
        "typing.spec.ts",
      ],
      use: { viewport: { width: 1280, height: 800 } },
    },
    // Who may see what, and how a start goes, does not hang on the width of a screen. A designer works at a desk: on the
    // phone one journey builds a whole top. accessibility.spec.ts looks at every page at both widths itself, and thirty.spec.ts
    // a designer's lists; in a-whole-call.spec.ts, corrections.spec.ts, sign-in-by-mail.spec.ts and
    // tester-page.spec.ts testers have phones of their own.
    {
      name: "phone",
      testIgnore: [
        ...LONG,
        "access.spec.ts",
        "changes.spec.ts",
        "corrections.spec.ts",
        "editor-*.spec.ts",
        "end-of-test.spec.ts",
        "gaps.spec.ts",
        "grading.spec.ts",
        "hostile-requests.spec.ts",
        "import.spec.ts",
        "new-pattern.spec.ts",
        "paste-tables.spec.ts",
        "patterns.spec.ts",
        "people.spec.ts",
        "pieces.spec.ts",
        "places.spec.ts",
        "privacy.spec.ts",
        "reminders.spec.ts",
        "sample-photos.spec.ts",
        "second-test.spec.ts",
        "set-up.spec.ts",
        "shown-photos.spec.ts",
        "sign-in-by-mail.spec.ts",
        "start.spec.ts",
        "tester-page.spec.ts",
        "thirty-actions.spec.ts",
        "thirty.spec.ts",
        "write-to-testers.spec.ts",
      ],
      use: { viewport: { width: 360, height: 740 }, hasTouch: true },
    },
    { name: "long", testMatch: LONG, use: { viewport: { width: 1280, height: 800 } } },
  ],
});

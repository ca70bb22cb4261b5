import { randomInt } from "node:crypto";
import { resolve } from "node:path";
import { defineConfig } from "vitest/config";

// A failing run is repeated with SEED=… npx vitest run. The zone is 12:45 or 13:45 ahead: a date taken for local shows.
process.env.SEED ??= String(randomInt(2 ** 31 - 1));
process.env.TZ = "Pacific/Chatham";

const DATABASE_TESTS = "test/**/*.database.test.ts";
/** Those that put something in the place of a module, which other files must not find loaded, nor they that of others. */
const MOCKING_TESTS = ["test/database/testers.database.test.ts", "test/features/accounts/sign-in.database.test.ts"];
/** On 2 cores Vitest would run one file at a time, and these wait for the database half of their time. */
const ON_DATABASE = {
  globalSetup: ["test/database/global-setup.ts"],
  setupFiles: ["test/database/file-database.ts"],
  maxWorkers: 2,
  testTimeout: 30_000,
  hookTimeout: 60_000,
};

export default defineConfig({
  resolve: {
    alias: {
      "@": resolve("src"),
      // Node loads the marker only under the condition react-server.
      "server-only": resolve("node_modules/server-only/empty.js"),
    },
  },
  test: {
    setupFiles: ["test/seed.ts"],
    projects: [
      { extends: true, test: { name: "layers", include: ["test/architecture/**/*.test.ts"] } },
      {
        extends: true,
        test: {
          name: "unit",
          include: ["test/**/*.test.{ts,tsx}"],
          exclude: [DATABASE_TESTS, "test/architecture/**"],
          // These share nothing that they change, so what they import is loaded once a thread and not once a file.
          pool: "threads",
          isolate: false,
          // Nothing is timed here: the command line's start alone takes seconds where the machine is busy.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "database",
          include: [DATABASE_TESTS],
          exclude: MOCKING_TESTS,
          ...ON_DATABASE,
          // What they import is loaded once a process: its databases and settings are those of the file that runs.
          isolate: false,
        },
      },
      { extends: true, test: { name: "database-mocking", include: MOCKING_TESTS, ...ON_DATABASE } },
    ],
  },
});

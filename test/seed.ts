import fc from "fast-check";
import { afterEach } from "vitest";

const seed = Number(process.env.SEED);

fc.configureGlobal({ seed });

afterEach(({ task }) => {
  if (task.result?.state === "fail") console.log(`seed of this run: SEED=${seed}`);
});

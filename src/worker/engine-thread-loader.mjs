import { register } from "tsx/esm/api";

// A thread does not inherit the loader of TypeScript.
register();
await import("./engine-thread-entry.ts");

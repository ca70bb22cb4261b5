export { expect } from "vitest";

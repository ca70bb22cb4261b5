import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { z } from "zod";

/** A reference file that stands in `data`. @throws where it has not the shape that the test expects. */
export function readJson<Schema extends z.ZodType>(name: string, schema: Schema): z.output<Schema> {
  const path = fileURLToPath(new URL(`data/${name}`, import.meta.url));
  return schema.parse(JSON.parse(readFileSync(path, "utf8")));
}

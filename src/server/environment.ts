import { z } from "zod";

const environmentSchema = z.object({
  DATABASE_URL: z.string().regex(/^postgres(ql)?:\/\//, { error: "DATABASE_URL must begin with postgresql://" }),
  NEXTAUTH_URL: z.url({ error: "NEXTAUTH_URL must be the address people open, such as https://sizes.example" }),
  NEXTAUTH_SECRET: z.string().min(32, { error: "NEXTAUTH_SECRET must be at least 32 characters long" }),
  SIZEWRIGHT_DEMO: z.enum(["on", "off"]).default("off"),
  LOG_LEVEL: z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
});

export type Environment = z.infer<typeof environmentSchema>;

let checked: Environment | undefined;

/** Settings of the process, checked once. @throws {Error} that names every setting that is missing or wrong. */
export function environment(): Environment {
  checked ??= read();
  return checked;
}

function read(): Environment {
  const parsed = environmentSchema.safeParse(process.env);
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues.map(({ path, message }) => `  ${path.join(".")}: ${message}`);
  throw new Error(`Some settings are missing or wrong:\n${lines.join("\n")}`);
}

import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { z } from "zod";
import { photosUrlSchema } from "@/server/environment";
import { StartError } from "./start-error";

export interface Settings {
  readonly mode: "demo" | "dev" | "production";
  readonly host: string;
  readonly port: number;
  /** Absent: a PostgreSQL of our own. */
  readonly databaseUrl?: string | undefined;
  readonly address?: string | undefined;
  readonly secret?: string | undefined;
  /** The bucket for photos; absent: in the folder. */
  readonly photosUrl?: string | undefined;
  /** How many trusted proxies are in front of this server. */
  readonly trustedProxies: number;
  /** Where this server stores its files: an absolute path, for PostgreSQL runs in a working folder of its own. */
  readonly folder: string;
}

const whole = (name: string, max: number) =>
  z.coerce
    .number({ error: `${name} must be a whole number` })
    .int()
    .min(0)
    .max(max, { error: `${name} is too large` });

/** An empty setting counts as absent, as `NAME=` in a file of settings means. */
const settingsSchema = z.object({
  HOST: z.string().optional(),
  PORT: whole("PORT", 65_535).default(3000),
  DATABASE_URL: z.string().optional(),
  NEXTAUTH_URL: z.string().optional(),
  NEXTAUTH_SECRET: z.string().optional(),
  PHOTOS_URL: photosUrlSchema.optional(),
  TRUSTED_PROXIES: whole("TRUSTED_PROXIES", 20).default(0),
  SIZEWRIGHT_FOLDER: z
    .string()
    .default(".sizewright")
    .transform((folder) => resolve(folder)),
});

/** @throws {StartError} that names each flag or setting that cannot be understood. */
export function readSettings(
  flags: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): Settings {
  const mode = readMode(flags);
  const given = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ""));
  const parsed = settingsSchema.safeParse(given);
  if (!parsed.success) throw new StartError(parsed.error.issues.map(({ message }) => message).join("\n"));
  const { HOST, PORT, DATABASE_URL, NEXTAUTH_URL, NEXTAUTH_SECRET, PHOTOS_URL, TRUSTED_PROXIES, SIZEWRIGHT_FOLDER } =
    parsed.data;
  return {
    mode,
    host: HOST ?? (mode === "demo" ? "127.0.0.1" : "0.0.0.0"),
    port: PORT,
    databaseUrl: DATABASE_URL,
    address: NEXTAUTH_URL,
    secret: NEXTAUTH_SECRET,
    photosUrl: PHOTOS_URL,
    trustedProxies: TRUSTED_PROXIES,
    folder: SIZEWRIGHT_FOLDER,
  };
}

function readMode(flags: readonly string[]): Settings["mode"] {
  try {
    const { values } = parseArgs({
      args: [...flags],
      options: { demo: { type: "boolean" }, dev: { type: "boolean" } },
    });
    if (values.demo === true && values.dev === true) throw new Error("--demo and --dev can't be used together");
    if (values.demo === true) return "demo";
    return values.dev === true ? "dev" : "production";
  } catch (error) {
    throw new StartError(`${error instanceof Error ? error.message : String(error)}. Known flags: --demo, --dev.`);
  }
}

import { z } from "zod";

/** An address alone, or `Name <address>`. */
const SENDER = /^(?:[^<>\r\n]*<)?[^<>@\s]+@[^<>@\s]+\.?[^<>@\s]+>?$/;

/** `NAME=` in a file of settings means that it is left out. */
const optional = <Value extends z.ZodType>(value: Value) =>
  z.preprocess((given) => (given === "" ? undefined : given), value.optional());

/** An address with a key, its secret and a bucket. */
function isBucketAddress(text: string): boolean {
  if (!/^(s3|https?):\/\//.test(text) || !URL.canParse(text)) return false;
  const { username, password, host, pathname } = new URL(text);
  return [username, password, host].every((part) => part !== "") && /^\/[^/]+\/?$/.test(pathname);
}

export const photosUrlSchema = z.string().refine(isBucketAddress, {
  error: "PHOTOS_URL must name a bucket, such as s3://KEY:SECRET@storage.example/photos?region=eu-central-1",
});

const environmentSchema = z.object({
  DATABASE_URL: z.string().regex(/^postgres(ql)?:\/\//, { error: "DATABASE_URL must begin with postgresql://" }),
  NEXTAUTH_URL: z.url({ error: "NEXTAUTH_URL must be the address people open, such as https://sizes.example" }),
  NEXTAUTH_SECRET: z.string().min(32, { error: "NEXTAUTH_SECRET must be at least 32 characters long" }),
  // The start hands on the whole path.
  SIZEWRIGHT_FOLDER: z.string().default(".sizewright"),
  SIZEWRIGHT_DEMO: z.enum(["on", "off"]).default("off"),
  LOG_LEVEL: z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
  SMTP_URL: optional(
    z.string().regex(/^smtps?:\/\/./, { error: "SMTP_URL must begin with smtp:// or smtps://, then the mail server" }),
  ),
  /** Whose account sees how mail is doing. */
  OPERATOR_EMAIL: optional(z.string().toLowerCase()),
  MAIL_FROM: optional(
    z.string().regex(SENDER, { error: "MAIL_FROM must be an address, such as Sizewright <mail@sizes.example>" }),
  ),
  DKIM_KEY_FILE: optional(z.string()),
  PHOTOS_URL: optional(photosUrlSchema),
  DKIM_SELECTOR: optional(z.string()).transform((name) => name ?? "sizewright"),
});

const checkedSchema = environmentSchema.refine(
  ({ SMTP_URL, MAIL_FROM }) => SMTP_URL === undefined || MAIL_FROM !== undefined,
  {
    path: ["MAIL_FROM"],
    error: "SMTP_URL is set, so say whom mail comes from, such as Sizewright <mail@sizes.example>",
  },
);

export type Environment = z.infer<typeof environmentSchema>;

const NAMES = Object.keys(environmentSchema.shape);

let checked: { readonly given: string; readonly environment: Environment } | undefined;

/** Settings of the process, checked when they change. @throws {Error} that names every setting that is missing or wrong. */
export function environment(): Environment {
  const given = NAMES.map((name) => process.env[name]).join("\0");
  if (checked?.given !== given) checked = { given, environment: read() };
  return checked.environment;
}

function read(): Environment {
  const parsed = checkedSchema.safeParse(process.env);
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues.map(({ path, message }) => `  ${path.join(".")}: ${message}`);
  throw new Error(`Some settings are missing or wrong:\n${lines.join("\n")}`);
}

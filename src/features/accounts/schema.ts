import { z } from "zod";

export const PASSWORD_LEAST = 10;
const PASSWORD_MOST = 200;
export const NAME_MOST = 80;
const EMAIL_MOST = 254;

export const emailSchema = z
  .string({ error: "Enter your e-mail address." })
  .trim()
  .toLowerCase()
  .max(EMAIL_MOST, { error: `An e-mail address has at most ${EMAIL_MOST} characters.` })
  .pipe(z.email({ error: "Enter a complete e-mail address, such as ann@example.org." }));

const newPassword = z
  .string({ error: `Choose a password of at least ${PASSWORD_LEAST} characters.` })
  .min(PASSWORD_LEAST, { error: `A password has at least ${PASSWORD_LEAST} characters of any kind.` })
  .max(PASSWORD_MOST, { error: `A password has at most ${PASSWORD_MOST} characters.` });

const name = z
  .string({ error: "Enter the name that others should see." })
  .trim()
  .min(1, { error: "Enter the name that others should see." })
  .max(NAME_MOST, { error: `A name has at most ${NAME_MOST} characters.` });

const knownPassword = z
  .string({ error: "Enter your password." })
  .max(PASSWORD_MOST, { error: `A password has at most ${PASSWORD_MOST} characters.` });

/** Where to go then. */
const next = z.string().optional();

export const signInSchema = z.object({ email: emailSchema, password: knownPassword, next });

export const signUpSchema = z.object({ name, email: emailSchema, password: newPassword, next });

export const askLinkSchema = z.object({ email: emailSchema, next });

export const changeAddressSchema = z.object({ email: emailSchema, password: knownPassword });

export const deletionSchema = z.object({ password: knownPassword });

export const lostLinkSchema = z.object({ email: emailSchema });

export const linkSchema = z.object({ link: z.string() });

export const linkPasswordSchema = linkSchema.extend({ newPassword });

export const linkSignUpSchema = linkSchema.extend({ name, password: newPassword });

export const aboutSchema = z.object({
  name,
  unit: z.enum(["cm", "in"], { error: "Choose centimetres or inches." }),
});

export const passwordSchema = z.object({ password: knownPassword, newPassword });

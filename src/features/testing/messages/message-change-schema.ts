import { z } from "zod";
import { freeText } from "../questions/schema";
import { messageTextSchema, subjectSchema } from "../writing/writing-schema";
import { CHANGEABLE_KINDS } from "./changeable-kinds";

export const kindSchema = z.enum(CHANGEABLE_KINDS);

const kindOfCallSchema = z.object({ callId: z.string(), kind: kindSchema });

export const switchSchema = kindOfCallSchema.extend({ isOff: z.enum(["yes", "no"]) });

export const versionedSchema = kindOfCallSchema.extend({ version: z.coerce.number().int().min(0) });

export const changedWordsSchema = versionedSchema.extend({
  subject: subjectSchema,
  text: messageTextSchema,
  note: freeText,
});

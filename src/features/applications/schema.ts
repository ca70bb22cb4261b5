import { z } from "zod";
import { idSchema, labelSchema, textSchema } from "@/engine/pattern";

export const EXPERIENCES = ["first", "some", "many"] as const;

/** What an applicant says of herself, as it is stored: without her name, her address and her body. */
export const applicationSchema = z.strictObject({
  /** Sizes that she would make; null: any within reach. */
  accepts: z.array(idSchema).nullable(),
  /** The same in the order in which she would like them; may be empty. */
  prefers: z.array(idSchema),
  /** The body that she gave is not her own: she makes the garment for somebody else. */
  forAnother: z.boolean(),
  yarn: textSchema,
  tool: labelSchema,
  unit: z.enum(["cm", "in"]),
  /** Of stitch names. */
  terms: z.enum(["us", "uk"]),
  /** Null where her browser did not tell. */
  timeZone: z.string().nullable(),
  experience: z.enum(EXPERIENCES),
  handle: labelSchema,
  pastWork: textSchema,
});

export type ApplicationDocument = z.infer<typeof applicationSchema>;

/** Body measurement -> cm, as it is stored. */
export const measurementsSchema = z.record(idSchema, z.number());

/** Body measurement -> what was typed. */
export const typedBodySchema = z.record(idSchema, z.string());

export const applicationWordSchema = z.enum(["yes", "maybe", "no"]);

/** What the designer thinks of an application before places are given. */
export type ApplicationWord = z.infer<typeof applicationWordSchema>;

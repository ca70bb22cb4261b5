import { z } from "zod";
import { SLEEVES, TEMPLATE_IDS } from "@/engine/templates";
import { BODY_TABLES } from "@/engine/trade-tables";
import {
  always,
  CHOOSE_SIZES,
  faultsOfOwn,
  nameOf,
  numberOf,
  overSchema,
  ownSchema,
  OWN_SIZES,
  tablesSchema,
} from "./new-pattern-schema";

const LONGEST_TYPED = 40;
const LARGEST_REPEAT = 60;

/** A length as typed, read later in the person's unit. */
const lengthOf = (missing: string) =>
  z.string({ error: missing }).max(LONGEST_TYPED, { error: `Keep it under ${LONGEST_TYPED} characters.` });

const repeatSchema = z
  .string()
  .optional()
  .transform((typed = "1", context) => {
    const repeat = Number(typed.trim() === "" ? "1" : typed.trim());
    if (Number.isInteger(repeat) && repeat >= 1 && repeat <= LARGEST_REPEAT) return repeat;
    context.addIssue({
      code: "custom",
      message: `A repeat is a whole number of stitches from 1 to ${LARGEST_REPEAT}.`,
    });
    return z.NEVER;
  });

/** A new pattern from a template as in its form. */
export const templateSchema = z
  .object({
    /** Idempotency key: sending the form twice makes one pattern. */
    formKey: z.uuid(),
    template: z.enum(TEMPLATE_IDS, { error: "Choose a template." }),
    name: nameOf("Give the pattern a name; you can change it later."),
    craft: z.enum(["crochet", "knitting"], { error: "Choose crochet or knitting." }),
    sizesFrom: z.enum([...BODY_TABLES.map(({ id }) => id), OWN_SIZES], { error: CHOOSE_SIZES }),
    tables: tablesSchema.optional(),
    own: ownSchema,
    stitches: numberOf("Enter the stitches of the gauge, such as 22."),
    rows: numberOf("Enter the rows of the gauge, such as 30."),
    over: overSchema,
    toolMm: numberOf("Enter the size of the hook or needles in mm, such as 4."),
    ease: lengthOf("Enter the ease, such as 8; 0 for none."),
    length: lengthOf("Enter the length to the underarm."),
    edging: lengthOf("Enter the depth of the edgings."),
    sleeve: z.enum(SLEEVES, { error: "Choose how long the sleeves are." }),
    repeat: repeatSchema,
  })
  .refine((form) => faultsOfOwn(form).body === undefined, {
    path: ["own", "body"],
    error: ({ input }) => faultsOfOwn(input).body,
    when: always,
  })
  .refine((form) => faultsOfOwn(form).sizes === undefined, {
    path: ["own", "sizes"],
    error: ({ input }) => faultsOfOwn(input).sizes,
    when: always,
  });

export type TemplateFields = z.output<typeof templateSchema>;

import { z } from "zod";
import { applicantsSchema, callSchema, patternSchema } from "@/engine/pattern";

const SCHEMAS = new Map<string, z.ZodType>([
  ["pattern", patternSchema],
  ["call", callSchema],
  ["applicants", applicantsSchema],
]);

/** The JSON Schema of our document formats, for people who write them. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly document: string }> },
): Promise<Response> {
  const schema = SCHEMAS.get((await params).document);
  if (schema === undefined) return new Response("This schema does not exist.\n", { status: 404 });
  return Response.json(z.toJSONSchema(schema, { io: "input" }), {
    headers: { "content-type": "application/schema+json" },
  });
}

import { z } from "zod";
import { callSchema, patternSchema } from "@/engine/pattern";

/** The JSON Schema of our documents, for whoever writes them. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly document: string }> },
): Promise<Response> {
  const { document } = await params;
  if (document !== "pattern" && document !== "call") return new Response("There is no such schema.\n", { status: 404 });
  const schema = z.toJSONSchema(document === "pattern" ? patternSchema : callSchema, { io: "input" });
  return Response.json(schema, { headers: { "content-type": "application/schema+json" } });
}

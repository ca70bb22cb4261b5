import "server-only";
import type { ReadableStream } from "node:stream/web";
import { AppError } from "@/server/errors";
import { photoOwner } from "./photo-owner-access";
import { receivePhoto } from "./photo-mutations";
import { photoOwnerIdSchema, sentPhotoSchema, type PhotoOwnerId } from "./photo-schema";
import type { PhotoProblem } from "./photo-views";
import { readSentForm } from "./sent-form";

/** Takes the photos of a request: one as its body, as our script sends it, or several in a form without scripts. */
export async function receiveRequest(request: Request): Promise<Response> {
  const isForm = request.headers.get("content-type")?.startsWith("multipart/form-data") === true;
  try {
    return isForm ? await receiveForm(request) : await receiveBody(request);
  } catch (error) {
    // Who may not send is told no more than who asks for what never was.
    if (error instanceof AppError) return new Response(null, { status: 404 });
    throw error;
  }
}

async function receiveBody(request: Request): Promise<Response> {
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const photo = sentPhotoSchema.safeParse(query).data ?? refuse();
  const owner = await photoOwner(photoOwnerIdSchema.safeParse(query).data ?? refuse());
  const problem = request.body === null ? "empty" : await receivePhoto(owner, photo, piecesOf(request.body));
  return new Response(problem, { status: problem === null ? 204 : 422 });
}

async function receiveForm(request: Request): Promise<Response> {
  const problems: (PhotoProblem | null)[] = [];
  const id = await readSentForm(request, async ({ owner, photo, body }) => {
    problems.push(await receivePhoto(await photoOwner(owner), photo, body));
  });
  if (id === null) return refuse();
  const problem = problems.length === 0 ? "none" : problems.find((each) => each !== null);
  const search = problem == null ? "" : `?problem=${problem}`;
  return new Response(null, { status: 303, headers: { Location: `${pageOf(id)}${search}` } });
}

function pageOf(id: PhotoOwnerId): string {
  return "testerId" in id ? `/testing/${id.testerId}/photos` : `/patterns/${id.patternId}/photos`;
}

function refuse(): never {
  throw new AppError("not-found");
}

/** The web's stream as Node's types have it; they are the same. */
function piecesOf(body: globalThis.ReadableStream<Uint8Array>): AsyncIterable<Uint8Array> {
  return body as ReadableStream<Uint8Array>;
}

import "server-only";
import type { ReadableStream } from "node:stream/web";
import { AppError } from "@/server/errors";
import { testerAccess } from "../home/access";
import { receivePhoto } from "./photo-mutations";
import { sentPhotoSchema, type PhotoProblem } from "./photo-schema";
import { sentForm } from "./sent-form";

/** Takes the photos of a request: one as its body, as our script sends it, or several in a form without scripts. */
export async function receiveRequest(request: Request): Promise<Response> {
  const isForm = request.headers.get("content-type")?.startsWith("multipart/form-data") === true;
  try {
    return isForm ? await receiveForm(request) : await receiveBody(request);
  } catch (error) {
    if (error instanceof AppError && error.code === "not-found") return new Response(null, { status: 404 });
    throw error;
  }
}

async function receiveBody(request: Request): Promise<Response> {
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const { testerId, ...photo } = sentPhotoSchema.safeParse(query).data ?? refuse();
  const access = await testerAccess(testerId);
  const problem = request.body === null ? "empty" : await receivePhoto(access, photo, streamOf(request.body));
  return new Response(problem, { status: problem === null ? 204 : 422 });
}

async function receiveForm(request: Request): Promise<Response> {
  const { testerId, photos } = sentForm(await request.formData()) ?? refuse();
  const access = await testerAccess(testerId);
  let problem: PhotoProblem | null = photos.length === 0 ? "none" : null;
  for (const { photo, file } of photos) {
    const found = file.size === 0 ? "empty" : await receivePhoto(access, photo, streamOf(file.stream()));
    problem ??= found;
  }
  const search = problem === null ? "" : `?problem=${problem}`;
  return new Response(null, { status: 303, headers: { Location: `/testing/${testerId}/photos${search}` } });
}

function refuse(): never {
  throw new AppError("not-found");
}

/** The web's stream as Node's types have it; they are the same. */
function streamOf(body: globalThis.ReadableStream<Uint8Array>): ReadableStream<Uint8Array> {
  return body as ReadableStream<Uint8Array>;
}

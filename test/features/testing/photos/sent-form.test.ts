import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { readSentForm, type PhotoInForm } from "@/features/testing/photos/sent-form";

const TESTER_ID = randomUUID();

function request(fields: Readonly<Record<string, string>>, files: readonly File[]): Request {
  const body = new FormData();
  for (const [name, value] of Object.entries(fields)) body.append(name, value);
  for (const file of files) body.append("photo", file);
  return new Request("http://localhost/photos/send", { method: "POST", body });
}

const FIELDS = { testerId: TESTER_ID, formKey: randomUUID(), view: "problem", note: "The  underarm\ngapes" };
const large = () => new File([new Uint8Array(5_000_000)], "large.jpg");
const small = () => new File(["bytes"], "small.jpg");

async function bytesOf(body: AsyncIterable<Uint8Array>): Promise<number> {
  let bytes = 0;
  for await (const piece of body) bytes += piece.length;
  return bytes;
}

it("hands on one photo after another, with the same id each time the form is sent", async () => {
  const read = async () => {
    const seen: (Pick<PhotoInForm, "photo"> & { bytes: number })[] = [];
    const owner = await readSentForm(request(FIELDS, [large(), small()]), async ({ photo, body }) => {
      seen.push({ photo, bytes: await bytesOf(body) });
    });
    return { owner, seen };
  };
  const { owner, seen } = await read();
  expect(owner).toMatchObject({ testerId: TESTER_ID });
  expect(seen).toMatchObject([
    { bytes: 5_000_000, photo: { view: "problem", note: "The underarm gapes" } },
    { bytes: 5, photo: { view: "problem" } },
  ]);
  expect((await read()).seen).toEqual(seen);
});

it("goes on after a photo of which only the beginning is read, and after one that is not read at all", async () => {
  const seen: number[] = [];
  let which = 0;
  await readSentForm(request(FIELDS, [large(), large(), small()]), async ({ body }) => {
    which += 1;
    if (which === 1) for await (const piece of body) if (piece.length > 0) break;
    if (which === 3) seen.push(await bytesOf(body));
  });
  expect([which, seen]).toEqual([3, [5]]);
});

it("ends with the first failure, once all is read", async () => {
  const failing = readSentForm(request(FIELDS, [large(), small()]), () => Promise.reject(new Error("no access")));
  await expect(failing).rejects.toThrow("no access");
});

it("names the trouble spot that the photos show, where there is one", async () => {
  const troubleId = randomUUID();
  const seen: (string | undefined)[] = [];
  const receive = ({ photo }: PhotoInForm) => Promise.resolve(void seen.push(photo.troubleId));
  await readSentForm(request({ ...FIELDS, troubleId }, [small()]), receive);
  await readSentForm(request(FIELDS, [small()]), receive);
  expect(seen).toEqual([troubleId, undefined]);
});

it("takes nothing from a form that is none of ours", async () => {
  const { view: _, ...unknown } = FIELDS;
  const taken: unknown[] = [];
  const owner = await readSentForm(request(unknown, [small()]), (photo) => Promise.resolve(void taken.push(photo)));
  expect([owner, taken]).toEqual([null, []]);
});

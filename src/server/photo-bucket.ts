import { createReadStream } from "node:fs";
import { rm, stat } from "node:fs/promises";
import type { PutObjectCommandInput, S3Client } from "@aws-sdk/client-s3";
import type { PhotoFiles } from "./photo-files";

const CONNECTION_MS = 5_000;
const ANSWER_MS = 30_000;

/** Loaded only by those who have a bucket. */
const s3 = () => import("@aws-sdk/client-s3");

/** A bucket that speaks S3, and what may be done in it. */
interface Bucket {
  readonly sdk: Awaited<ReturnType<typeof s3>>;
  readonly client: S3Client;
  readonly name: string;
}

/** Photos in a bucket. @param address see `openBucket`. */
export async function photosInBucket(address: string): Promise<PhotoFiles> {
  const bucket = await openBucket(address);
  const { sdk, client, name: Bucket } = bucket;
  const put = async (Key: string, more: Pick<PutObjectCommandInput, "Body" | "ContentLength">) =>
    void (await client.send(new sdk.PutObjectCommand({ Bucket, Key, ...more })));
  return {
    take: async (path, name) => {
      await put(name, { Body: createReadStream(path), ContentLength: (await stat(path)).size });
      await rm(path, { force: true });
    },
    write: async (name, bytes) => await put(name, { Body: bytes, ContentLength: bytes.length }),
    read: async (name) => {
      try {
        const { Body } = await client.send(new sdk.GetObjectCommand({ Bucket, Key: name }));
        return Body === undefined ? null : Buffer.from(await Body.transformToByteArray());
      } catch (error) {
        if (error instanceof sdk.NoSuchKey) return null;
        throw error;
      }
    },
    delete: async (name) => void (await client.send(new sdk.DeleteObjectCommand({ Bucket, Key: name }))),
    deleteFolder: async (folder) => await deleteListed(bucket, folder, () => true),
    deleteBefore: async (folder, moment) =>
      await deleteListed(bucket, folder, (written) => written !== undefined && written < moment),
  };
}

/** Why a bucket cannot be used, in a sentence for whoever starts the server; null where it can. */
export async function bucketProblem(address: string): Promise<string | null> {
  const { sdk, client, name } = await openBucket(address);
  try {
    await client.send(new sdk.HeadBucketCommand({ Bucket: name }));
    return null;
  } catch (error) {
    const status = error instanceof sdk.S3ServiceException ? error.$metadata.httpStatusCode : undefined;
    const why = WHY[status ?? 0] ?? (error instanceof Error ? error.message : String(error));
    return `The bucket “${name}” at ${new URL(address).host} (PHOTOS_URL) can’t be used: ${why}.`;
  } finally {
    client.destroy();
  }
}

const WHY: Readonly<Record<number, string>> = {
  301: "it is in another region; add ?region= to the address",
  403: "the key or its secret is wrong, or they are not allowed to use it",
  404: "there is no such bucket",
};

/** @param address `s3://KEY:SECRET@HOST/BUCKET?region=REGION`, with `http://` where the connection is not encrypted. */
async function openBucket(address: string): Promise<Bucket> {
  const sdk = await s3();
  const { protocol, username, password, pathname, searchParams } = new URL(address);
  // Only of the schemes that browsers know does a URL tell the host in full.
  const { host } = new URL(address.replace(/^s3:/, "https:"));
  const client = new sdk.S3Client({
    endpoint: `${protocol === "http:" ? "http" : "https"}://${host}`,
    region: searchParams.get("region") ?? "us-east-1",
    credentials: { accessKeyId: decodeURIComponent(username), secretAccessKey: decodeURIComponent(password) },
    forcePathStyle: true,
    // Not every server that speaks S3 knows the newer checksums.
    requestChecksumCalculation: "WHEN_REQUIRED",
    responseChecksumValidation: "WHEN_REQUIRED",
    requestHandler: { connectionTimeout: CONNECTION_MS, requestTimeout: ANSWER_MS },
  });
  return { sdk, client, name: pathname.split("/")[1] ?? "" };
}

async function deleteListed(
  { sdk, client, name: Bucket }: Bucket,
  folder: string,
  isMeant: (written: Date | undefined) => boolean,
): Promise<void> {
  for await (const { Contents = [] } of sdk.paginateListObjectsV2({ client }, { Bucket, Prefix: `${folder}/` })) {
    const Objects = Contents.flatMap(({ Key, LastModified }) =>
      Key !== undefined && isMeant(LastModified) ? [{ Key }] : [],
    );
    if (Objects.length === 0) continue;
    const request = new sdk.DeleteObjectsCommand({ Bucket, Delete: { Objects, Quiet: true } });
    const { Errors = [] } = await client.send(request);
    if (Errors.length > 0)
      throw new Error(`${Errors.length} files were not deleted: ${Errors[0]?.Code ?? "no reason"}`);
  }
}

import { request } from "node:http";
import { gunzipSync } from "node:zlib";

export interface Load {
  /** Processor time of server and PostgreSQL for one page, ms. */
  readonly processorMs: number;
  /** How long half of those who ask wait at most. */
  readonly medianMs: number;
  /** The page itself, not compressed. */
  readonly bytes: number;
}

interface Asked {
  readonly address: string;
  readonly cookie: string;
  readonly requests: number;
  readonly atOnce: number;
  /** Processor time of the server so far, ms. */
  readonly spentMs: () => number;
}

/** Asks for a page again and again, always so many at once. @throws {Error} for an answer that is not 200. */
export async function loadPage({ address, cookie, requests, atOnce, spentMs }: Asked): Promise<Load> {
  const waits: number[] = [];
  let [asked, bytes] = [0, 0];
  const person = async () => {
    while (asked < requests) {
      asked += 1;
      const start = performance.now();
      bytes = Buffer.byteLength(await page(address, cookie));
      waits.push(performance.now() - start);
    }
  };
  const before = spentMs();
  await Promise.all(Array.from({ length: atOnce }, person));
  const processorMs = (spentMs() - before) / requests;
  const [median = Number.NaN] = waits.toSorted((left, right) => left - right).slice(Math.floor(waits.length / 2));
  return { processorMs, medianMs: median, bytes };
}

/** How many of so many who ask in the same moment get the page. */
export async function answeredOf(many: number, address: string, cookie: string): Promise<number> {
  const answers = await Promise.allSettled(Array.from({ length: many }, () => page(address, cookie)));
  return answers.filter(({ status }) => status === "fulfilled").length;
}

async function page(address: string, cookie: string): Promise<string> {
  const answer = await fetch(address, { headers: { cookie }, redirect: "manual" });
  if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}`);
  return await answer.text();
}

/** JavaScript that a page loads, bytes as transferred with gzip. */
export async function scriptBytes(address: string, cookie: string): Promise<number> {
  const html = await page(address, cookie);
  const sources = new Set(Array.from(html.matchAll(/<script[^>]+src="([^"]+)"/g), ([, source = ""]) => source));
  const sizes = await Promise.all([...sources].map((source) => transferred(new URL(source, address))));
  return sizes.reduce((sum, size) => sum + size, 0);
}

/** Bytes of a file as it is sent. */
async function transferred(url: URL): Promise<number> {
  return await new Promise((resolve, reject) => {
    const asked = request(url, { headers: { "accept-encoding": "gzip" } }, (answer) => {
      const chunks: Buffer[] = [];
      answer.on("data", (chunk: Buffer) => chunks.push(chunk));
      answer.on("end", () => {
        const sent = Buffer.concat(chunks);
        // Said to be gzip, and it is: else a figure of plain bytes would be told as compressed.
        if (answer.headers["content-encoding"] === "gzip") gunzipSync(sent);
        resolve(sent.length);
      });
    });
    asked.on("error", reject);
    asked.end();
  });
}

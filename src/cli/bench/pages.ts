import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import { loadPage, scriptBytes, type Load } from "./page-load";

const AT_ONCE = 20;
const REQUESTS = 100;
const FIGURES = "test/figures";
const READY = /Sizewright is ready: (\S+)/;

const laidSchema = z.object({
  /** One that holds nothing, of the same build and for the same kind of person. */
  empty: z.object({ name: z.string(), path: z.string(), cookie: z.string() }),
  pages: z.array(z.object({ name: z.string(), path: z.string(), cookie: z.string(), isTesters: z.boolean() })),
});

/** Server time of every page of a call with 300 testers at 20 people at once, beside an empty page; and its JavaScript. */
export async function pagesBench(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  chmodSync(folder, 0o755);
  const server = await startServer(folder);
  try {
    const { empty, pages } = await layCall(folder, server.address);
    const measure = async ({ path, cookie }: { path: string; cookie: string }) =>
      await loadPage({ address: `${server.address}${path}`, cookie, requests: REQUESTS, atOnce: AT_ONCE });
    const emptyLoad = await measure(empty);
    const emptyScript = await scriptBytes(`${server.address}${empty.path}`, empty.cookie);
    const lines = [
      `A call with 300 testers, production build, ${AT_ONCE} people at once, ${REQUESTS} requests a page, on the machine that also asks. Bars: design 7.`,
      line("page", { msAPage: "ms a page", times: "× empty", medianMs: "wait", kB: "kB HTML", script: "kB JS" }),
      shown(empty.name, { load: emptyLoad, empty: emptyLoad, script: emptyScript }),
    ];
    for (const page of pages) {
      const script = await scriptBytes(`${server.address}${page.path}`, page.cookie);
      const above = page.isTesters ? { above: emptyScript } : {};
      try {
        lines.push(shown(page.name, { load: await measure(page), empty: emptyLoad, script, ...above }));
      } catch (error) {
        lines.push(
          `${page.name.padEnd(34)} not answered in time: ${error instanceof Error ? error.message : "unknown"}`,
        );
      }
    }
    const again = await measure(empty);
    lines.push(shown(`${empty.name}, again`, { load: again, empty: emptyLoad, script: emptyScript }), "");
    const text = lines.join("\n");
    mkdirSync(FIGURES, { recursive: true });
    writeFileSync(`${FIGURES}/bench-pages.txt`, text);
    return text;
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Shown {
  readonly load: Load;
  readonly empty: Load;
  readonly script: number;
  /** For a tester's page: the empty page's JavaScript, bytes. */
  readonly above?: number;
}

function shown(name: string, { load, empty, script, above }: Shown): string {
  const more = above === undefined ? "" : ` (${((script - above) / 1000).toFixed(1)} more)`;
  return line(name, {
    msAPage: load.msAPage.toFixed(1),
    times: (load.msAPage / empty.msAPage).toFixed(2),
    medianMs: load.medianMs.toFixed(0),
    kB: (load.bytes / 1000).toFixed(0),
    script: `${(script / 1000).toFixed(1)}${more}`,
  });
}

interface Cells {
  readonly msAPage: string;
  readonly times: string;
  readonly medianMs: string;
  readonly kB: string;
  readonly script: string;
}

function line(name: string, { msAPage, times, medianMs, kB, script }: Cells): string {
  return `${name.padEnd(34)} ${msAPage.padStart(9)} ${times.padStart(7)} ${medianMs.padStart(6)} ${kB.padStart(8)}  ${script}`;
}

const SECRET = "a secret of the bench, for nothing else at all";

async function startServer(folder: string): Promise<{ address: string; stop: () => Promise<void> }> {
  const child = spawn(process.execPath, ["dist/start/main.js"], {
    env: {
      ...process.env,
      ...{ HOST: "127.0.0.1", PORT: "0", SIZEWRIGHT_FOLDER: folder, LOG_LEVEL: "error" },
      ...{ DATABASE_URL: "", NEXTAUTH_URL: "", NEXTAUTH_SECRET: SECRET },
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const address = await said(child, READY);
  const stop = async () => {
    child.kill("SIGTERM");
    await once(child, "exit");
  };
  return { address, stop };
}

/** Lays the call in a process of its own, for the features' code loads only under its own condition. */
async function layCall(folder: string, address: string): Promise<z.infer<typeof laidSchema>> {
  const flags = ["--conditions", "react-server", "--import", "tsx", "prisma/lay-large-call.ts"];
  const child = spawn(process.execPath, flags, {
    env: {
      ...process.env,
      ...{ NEXTAUTH_SECRET: SECRET, NEXTAUTH_URL: address },
      DATABASE_URL: readFileSync(join(folder, "database-url"), "utf8").trim(),
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  return laidSchema.parse(JSON.parse(await said(child, /^laid: (.+)$/m)));
}

/** What a process prints that the expression looks for. @throws {Error} where it ends without. */
async function said(child: ChildProcess, expression: RegExp): Promise<string> {
  let printed = "";
  return await new Promise((resolve, reject) => {
    child.stdout?.on("data", (chunk) => {
      printed += String(chunk);
      const found = expression.exec(printed)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once("exit", () => reject(new Error(`ended too early: ${printed.trim()}`)));
  });
}

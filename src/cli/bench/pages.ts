import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pinClient, seedCall, startServer, type BenchServer, type Seeded } from "./bench-server";
import { answeredOf, loadPage, scriptBytes, type Load } from "./page-load";
import { benchPages, RUSHED, type BenchPage } from "./page-list";
import { serverMs } from "./server-processes";

const AT_ONCE = 20;
/** Before a page is measured; until then its code is still being compiled. */
const WARM = 100;
const REQUESTS = 40;
const ROUNDS = 5;
const RUSH = 100;
const TESTERS = [300, 2000];
const FIGURES = "test/figures";
/** 95th percentile of Student's t with `ROUNDS` − 1 degrees of freedom: the interval holds 90 %. */
const T_95 = 2.132;

/** At most so many times an empty page, by how much HTML a page is. */
const BARS = [
  { kB: 80, times: 2 },
  { kB: 130, times: 3 },
] as const;

const HEAD = [
  `Pages of a call with 300 and with 2000 testers, production build, ${AT_ONCE} people at once. Processor time of web server and PostgreSQL`,
  `a page; × empty: the mean of ${ROUNDS} rounds, in each an empty page first, ± half of its 90 % interval. Each page is asked for`,
  `${WARM} times before it is measured. Bars: HTML of up to 80 kB at most 2 × an empty page, up to 130 kB at most 3 ×, none larger; all of`,
  "100 who ask in the same moment get the page.",
];

/**
 * Processor time of every page of a large call beside an empty page; and its JavaScript.
 *
 * @param only a part of the names of the rows to measure, such as `300: designer /progress`; the figures are then not stored.
 */
export async function pagesBench(only = ""): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "sizewright-bench-"));
  chmodSync(folder, 0o755);
  const server = await startServer(folder);
  try {
    const isPinned = pinClient();
    const pinned = isPinned
      ? "The server has one core, who asks the other."
      : "The server shares its cores with who asks.";
    const lines = [...HEAD, pinned, ""];
    for (const testers of TESTERS.filter((many) => only === "" || only.startsWith(String(many)))) {
      const seeded = await seedCall(folder, server.address, testers);
      lines.push(...(await callRows({ server, seeded, testers, only })), "");
    }
    const text = lines.join("\n");
    mkdirSync(FIGURES, { recursive: true });
    if (only === "") writeFileSync(`${FIGURES}/bench-pages.txt`, text);
    return text;
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

interface CallBench {
  readonly server: BenchServer;
  readonly seeded: Seeded;
  readonly testers: number;
  readonly only: string;
}

async function callRows(bench: CallBench): Promise<string[]> {
  const { server, seeded, testers, only } = bench;
  const empty = await scriptBytes(`${server.address}/patterns`, seeded.cookies.newcomer);
  const rows = [
    row(`${testers} testers`, { ms: "ms a page", times: "× empty", waitMs: "wait", kB: "kB HTML", end: "kB JS" }),
  ];
  for (const page of benchPages(seeded)) {
    const name = nameOf(testers, page);
    if (!name.startsWith(only)) continue;
    const asked = await rounds(bench, page).catch((error: unknown) => String(error));
    rows.push(
      typeof asked === "string" ? `${name.padEnd(36)} ${asked}  missed` : pageRow(name, asked, { page, empty }),
    );
  }
  for (const label of RUSHED) {
    const address = `${server.address}/calls/${seeded.callId}${label}`;
    const answered = await answeredOf(RUSH, address, seeded.cookies.designer);
    const name = `${nameOf(testers, { asker: "designer", label })}, ${RUSH} at once`;
    rows.push(`${name.padEnd(46)} ${answered} answered  ${verdict(answered === RUSH)}`);
  }
  return rows;
}

function nameOf(testers: number, { asker, label }: Pick<BenchPage, "asker" | "label">): string {
  return `${testers}: ${asker} ${label}`;
}

interface Measured extends Load {
  readonly times: number;
  readonly halfWidth: number;
  readonly script: number;
}

/** A page and an empty one in turn, so that a busy minute of the machine counts for both. */
async function rounds({ server, seeded }: CallBench, { asker, path }: BenchPage): Promise<Measured> {
  const measure = async (path: string, cookie: string, requests: number) =>
    await loadPage({
      address: `${server.address}${path}`,
      ...{ cookie, requests, atOnce: AT_ONCE, spentMs: () => serverMs(server.pid) },
    });
  const cookie = seeded.cookies[asker];
  await measure(path, cookie, WARM);
  const loads: Load[] = [];
  const ratios: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const empty = await measure("/patterns", seeded.cookies.newcomer, REQUESTS);
    const load = await measure(path, cookie, REQUESTS);
    loads.push(load);
    ratios.push(load.processorMs / empty.processorMs);
  }
  const times = mean(ratios);
  const spread = Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - times) ** 2, 0) / (ROUNDS - 1));
  return {
    processorMs: mean(loads.map(({ processorMs }) => processorMs)),
    medianMs: mean(loads.map(({ medianMs }) => medianMs)),
    bytes: loads[0]?.bytes ?? 0,
    times,
    halfWidth: (T_95 * spread) / Math.sqrt(ROUNDS),
    script: await scriptBytes(`${server.address}${path}`, cookie),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function pageRow(
  name: string,
  { processorMs, medianMs, bytes, times, halfWidth, script }: Measured,
  { page, empty }: { readonly page: BenchPage; readonly empty: number },
): string {
  const more = page.asker === "designer" ? "" : ` (${kB(script - empty)} more)`;
  const bar = BARS.find((each) => bytes <= each.kB * 1000);
  const isMet = bar !== undefined && times <= bar.times;
  return row(name, {
    ms: processorMs.toFixed(1),
    times: `${times.toFixed(2)} ± ${halfWidth.toFixed(2)}`,
    waitMs: medianMs.toFixed(0),
    kB: (bytes / 1000).toFixed(0),
    end: `${kB(script)}${more}  ${verdict(isMet)}`,
  });
}

function kB(bytes: number): string {
  return (bytes / 1000).toFixed(1);
}

function verdict(isMet: boolean): string {
  return isMet ? "met" : "missed";
}

interface Cells {
  readonly ms: string;
  readonly times: string;
  readonly waitMs: string;
  readonly kB: string;
  readonly end: string;
}

function row(name: string, { ms, times, waitMs, kB, end }: Cells): string {
  return `${name.padEnd(36)} ${ms.padStart(9)} ${times.padStart(14)} ${waitMs.padStart(6)} ${kB.padStart(8)}  ${end}`;
}

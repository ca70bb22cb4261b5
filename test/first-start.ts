import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { z } from "zod";
import { copyBuild, people, refusedStart, started, type Person } from "./starting";

/**
 * What is built, started as by people who have just cloned it: below a folder with a space and an umlaut, as an ordinary
 * user and as root, with every kind of SIZEWRIGHT_FOLDER. To be run after npm run build.
 */
const PUBLIC_ADDRESS = "https://sizes.example";

function check(holds: boolean, promise: string): void {
  if (!holds) throw new Error(`This does not hold: ${promise}`);
  console.log(`  ${promise}`);
}

async function statusOf(url: string): Promise<number> {
  return (await fetch(url, { redirect: "manual" })).status;
}

async function answers(address: string): Promise<void> {
  check((await statusOf(`${address}/sign-in`)) === 200, "the sign-in page answers");
  check((await statusOf(`${address}/ready`)) === 200, "the server says that it is ready");
}

/** @returns the id of the demo’s call that takes applications. */
async function openCall(folder: string): Promise<string> {
  const client = new Client({ connectionString: readFileSync(join(folder, "database-url"), "utf8").trim() });
  await client.connect();
  try {
    const { rows } = await client.query("SELECT call_id AS id FROM listing WHERE apply_until > now()");
    return z.tuple([z.object({ id: z.string() })]).parse(rows)[0].id;
  } finally {
    await client.end();
  }
}

async function demoInDefaultFolder(person: Person, root: string): Promise<string> {
  console.log("the demo in the default folder");
  let call = "";
  await started({ person, root, flags: ["--demo"] }, async (address) => {
    await answers(address);
    call = await openCall(join(root, ".sizewright"));
  });
  return call;
}

async function secondStart(person: Person, root: string, call: string): Promise<void> {
  console.log("a second start over the same data, at a public address");
  const settings = { NEXTAUTH_URL: PUBLIC_ADDRESS };
  await started({ person, root, flags: ["--demo"], settings }, async (address) => {
    await answers(address);
    check((await openCall(join(root, ".sizewright"))) === call, "the data of the first start are there");
    const page = await (await fetch(`${address}/open-calls/${call}`)).text();
    const picture = /<meta property="og:image" content="([^"]+)"/.exec(page)?.[1] ?? "";
    check(picture.startsWith(`${PUBLIC_ADDRESS}/open-calls/`), "a shared link's picture has the public address");
    check((await statusOf(picture.replace(PUBLIC_ADDRESS, address))) === 200, "the picture is drawn");
    check(!page.includes("localhost"), "the page names no other address");
  });
}

async function relativeFolder(person: Person, root: string): Promise<void> {
  console.log("a relative folder");
  await started({ person, root, settings: { SIZEWRIGHT_FOLDER: "data/größe neu" } }, answers);
}

/** @returns the settings with which it was refused; the folder can be used now. */
async function refusedFolder(person: Person, root: string): Promise<Readonly<Record<string, string>>> {
  console.log("an absolute folder that cannot be used");
  const folder = join(root, "elsewhere");
  const settings = { SIZEWRIGHT_FOLDER: folder };
  // Nothing is forbidden to root, but a file is no folder.
  if (person.isRoot) writeFileSync(folder, "");
  else mkdirSync(folder, { mode: 0o555 });
  const { code, printed } = await refusedStart({ person, root, settings });
  check(code === 1, "the start ends with 1");
  const sentence = person.isRoot
    ? `${folder} is not a folder. Move that file away, or choose another folder with SIZEWRIGHT_FOLDER.`
    : `Sizewright has no permission to use ${folder}. Give this user permission to read and write it, or choose another folder with SIZEWRIGHT_FOLDER.`;
  check(printed === sentence, `it says: ${printed}`);
  if (person.isRoot) rmSync(folder);
  else chmodSync(folder, 0o777);
  return settings;
}

const parent = mkdtempSync(join(tmpdir(), "sizewright-first-"));
chmodSync(parent, 0o755);
try {
  for (const person of people()) {
    console.log(`\nas ${person.name}`);
    const root = join(parent, person.name, "Größe neu");
    copyBuild(root, person);
    const call = await demoInDefaultFolder(person, root);
    const settings = await refusedFolder(person, root);
    // Root differs from others in whose folders it may use, and not in what a start does there.
    if (person.isRoot) continue;
    await secondStart(person, root, call);
    await relativeFolder(person, root);
    console.log("the absolute folder, once it can be used");
    await started({ person, root, settings }, answers);
  }
} finally {
  rmSync(parent, { recursive: true, force: true });
}

import { readFileSync } from "node:fs";
process.env.DATABASE_URL = readFileSync("/tmp/demo-folder/database-url", "utf8").trim();
process.env.NEXTAUTH_URL = "http://localhost:3300"; process.env.SIZEWRIGHT_FOLDER = "/tmp/demo-folder";
process.env.NEXTAUTH_SECRET ??= readFileSync("/tmp/demo-folder/secret", "utf8").trim();
const { chromium } = await import("playwright");
const { makeTester } = await import("./make-tester");
const { makeThirty } = await import("./make-thirty").catch(() => ({}) as any);
const { letIn } = await import("./make-tester");
const { signInByCookie, query } = await import("./designer");
const { saltmarshPattern } = await import("../prisma/demo/saltmarsh-pattern");
const { publishListing } = await import("./make-open-call");
const b = await chromium.launch({ executablePath: "/usr/bin/chromium-headless-shell", args: ["--no-sandbox"] });
let ids: any;
try { ids = JSON.parse(readFileSync("/tmp/shots.json", "utf8")); } catch {
  const t = await makeTester(saltmarshPattern, { size: "size-m" });
  await query("INSERT INTO tester_contact (tester_id, name, email) VALUES ($1, 'Rosalind Invented-Featherstonehaugh', $2)", [t.testerId, `${t.testerId}@example.org`]);
  await publishListing(t.callId).catch((e) => console.log(String(e)));
  const [c] = await query("SELECT pattern_id FROM call WHERE id = $1", [t.callId]) as any;
  ids = { ...t, patternId: c.pattern_id };
  (await import("node:fs")).writeFileSync("/tmp/shots.json", JSON.stringify(ids));
}
const fill = (p: string) => p.replace("CALL", ids.callId).replace("PATTERN", ids.patternId).replace("TESTER", ids.testerId);
for (const arg of process.argv.slice(2)) {
  const [who, path, name] = arg.split("|") as [string, string, string];
  for (const [w, h] of [[1280, 800], [360, 740]] as const) {
    const ctx = await b.newContext({ viewport: { width: w, height: h }, baseURL: "http://localhost:3300", locale: "en-GB" });
    if (who === "d") await signInByCookie(ctx, ids.designer); if (who === "t") await letIn(ctx, ids);
    const p = await ctx.newPage(); const r = await p.goto(fill(path)); await p.waitForTimeout(700);
    const wide = await p.evaluate(() => document.documentElement.scrollWidth);
    console.log(name, w, r?.status(), wide > w ? "SIDEWAYS " + wide : "");
    await p.screenshot({ path: `/tmp/shots/${name}-${w}.png`, fullPage: true }); await ctx.close();
  }
}
await b.close(); process.exit(0);

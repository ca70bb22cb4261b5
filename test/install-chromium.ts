import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { chromium } from "playwright";

/** The shell has no window, which the whole browser draws even where nobody sees it: a page opens in a fifth of the time. */
const SYSTEM_CHROMIUM = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium"].find((file) => existsSync(file));

/** How Playwright finds and starts its browser: the system's Chromium where there is one. */
export const CHROMIUM_OPTIONS = {
  ...(SYSTEM_CHROMIUM === undefined ? {} : { executablePath: SYSTEM_CHROMIUM }),
  args: process.getuid?.() === 0 ? ["--no-sandbox"] : [],
};

/** Sees to a Chromium for the browser tests: Debian's package where we are root, else Playwright's own. */
export function installChromium(): void {
  if (SYSTEM_CHROMIUM !== undefined || existsSync(chromium.executablePath())) return;
  const steps =
    process.getuid?.() === 0
      ? [
          ["apt-get", "update"],
          ["apt-get", "install", "--yes", "--no-install-recommends", "chromium-headless-shell"],
        ]
      : [["npx", "playwright", "install", "chromium"]];
  for (const [command = "", ...flags] of steps) {
    const { status } = spawnSync(command, flags, { stdio: "inherit" });
    if (status !== 0) throw new Error(`No Chromium for the browser tests: ${command} ${flags.join(" ")} failed.`);
  }
}

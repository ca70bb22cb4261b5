const WORKER = "/pattern-copy.js";
const CACHES = "sizewright-pattern ";

/** Keeps a copy of a page in this browser, for when there is no connection. Without a secure connection browsers refuse. */
export async function keepPage(path: string): Promise<void> {
  if (!hasWorkers()) return;
  try {
    const registration = await navigator.serviceWorker.register(WORKER, { scope: path });
    const worker = registration.active ?? (await whenActive(registration));
    worker?.postMessage("keep");
  } catch {
    // The page works without a copy.
  }
}

/** Removes the copies of one page or, without a path, of all. */
export async function forgetPages(path?: string): Promise<void> {
  try {
    if (hasWorkers())
      for (const registration of await navigator.serviceWorker.getRegistrations())
        if (isOurs(registration, path)) await registration.unregister();
    if ("caches" in window)
      for (const name of await caches.keys())
        if (path === undefined ? name.startsWith(CACHES) : name === CACHES + path) await caches.delete(name);
  } catch {
    // Where there is no storage there is no copy.
  }
}

function hasWorkers(): boolean {
  return "serviceWorker" in navigator;
}

function isOurs({ active, installing, scope }: ServiceWorkerRegistration, path: string | undefined): boolean {
  const script = (active ?? installing)?.scriptURL ?? "";
  return script.endsWith(WORKER) && (path === undefined || new URL(scope).pathname === path);
}

async function whenActive({ installing, waiting }: ServiceWorkerRegistration): Promise<ServiceWorker | null> {
  const worker = installing ?? waiting;
  if (worker === null) return null;
  await new Promise<void>((resolve) => {
    const look = () => {
      if (worker.state === "activated" || worker.state === "redundant") resolve();
    };
    worker.addEventListener("statechange", look);
    look();
  });
  return worker.state === "activated" ? worker : null;
}

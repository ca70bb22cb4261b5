"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";

const FIRST_LOOK_MS = 500;
const LATER_LOOKS_MS = 5_000;
/** What is calculated in the background usually takes less than two seconds. */
export const USUAL_LOOKS = 30;

/**
 * Polls in the background, and reloads the page once there is something new.
 *
 * @param address answers 200 once there is something to show, 202 until then.
 */
export function WatchFor({ address }: { readonly address: string }) {
  useWatch(address);
  return (
    <noscript>
      <meta httpEquiv="refresh" content="10" />
    </noscript>
  );
}

/** @returns how often it has asked. */
export function useWatch(address: string): number {
  const router = useRouter();
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    const leaving = new AbortController();
    const look = async () => {
      if (await isReady(address, leaving.signal)) router.refresh();
      if (!leaving.signal.aborted) setLooks(looks + 1);
    };
    const next = setTimeout(() => void look(), looks < USUAL_LOOKS ? FIRST_LOOK_MS : LATER_LOOKS_MS);
    return () => {
      clearTimeout(next);
      leaving.abort();
    };
  }, [address, router, looks]);
  return looks;
}

/** A lost connection is asked again. */
async function isReady(address: string, signal: AbortSignal): Promise<boolean> {
  try {
    const { status } = await fetch(address, { signal, cache: "no-store" });
    return status === 200;
  } catch {
    return false;
  }
}

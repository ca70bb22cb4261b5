"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { Notice } from "@/ui/notice";

const FIRST_LOOK_MS = 500;
const LATER_LOOKS_MS = 5_000;
/** Most calls take less than two seconds. */
const USUAL_LOOKS = 30;

const WORDS = {
  call: {
    title: "Calculating the results",
    why: "Reports or the pattern have changed.",
  },
  plan: {
    title: "Calculating the new numbers",
    why: "Sizewright looks for the counts that come closest to your targets, and compares the reports with them.",
  },
} as const;

interface StillCalculatingProps {
  readonly what: keyof typeof WORDS;
  /** Answers 200 once there is something to show, 202 until then. */
  readonly watch: string;
}

/** In the place of results that are not there yet: asks until they are, then shows them. */
export function StillCalculating({ what, watch }: StillCalculatingProps) {
  const looks = useWatch(watch);
  return (
    <>
      <Notice title={WORDS[what].title}>
        {looks < USUAL_LOOKS ? (
          <p>{WORDS[what].why} This page shows the results as soon as they are there.</p>
        ) : (
          <p>
            This takes longer than usual. You can leave the page; nothing is lost, and it goes on in the background. A
            test with thousands of testers takes up to a minute.
          </p>
        )}
      </Notice>
      <noscript>
        <meta httpEquiv="refresh" content="3" />
      </noscript>
    </>
  );
}

/** Asks in the background, and draws the page again once there is something new. */
export function WatchFor({ address }: { readonly address: string }) {
  useWatch(address);
  return (
    <noscript>
      <meta httpEquiv="refresh" content="10" />
    </noscript>
  );
}

/** @returns how often it has asked. */
function useWatch(address: string): number {
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

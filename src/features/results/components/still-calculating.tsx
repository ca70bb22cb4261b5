"use client";

import { Notice } from "@/ui/notice";
import { USUAL_LOOKS, useWatch } from "@/ui/watch-for";

const WORDS = {
  call: {
    title: "Calculating the results",
    why: "Reports or the pattern have changed.",
  },
  plan: {
    title: "Calculating the new numbers",
    why: "Sizewright is finding the counts closest to your targets and comparing the reports with them.",
  },
} as const;

interface StillCalculatingProps {
  readonly what: keyof typeof WORDS;
  /** Answers 200 once there is something to show, 202 until then. */
  readonly watch: string;
}

/** Shown until results are there: polls for them, then reloads. */
export function StillCalculating({ what, watch }: StillCalculatingProps) {
  const looks = useWatch(watch);
  return (
    <>
      <Notice title={WORDS[what].title}>
        {looks < USUAL_LOOKS ? (
          <p>{WORDS[what].why} The results appear here as soon as they are ready.</p>
        ) : (
          <p>
            This is taking longer than usual. You can leave the page; the calculation continues in the background. A
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

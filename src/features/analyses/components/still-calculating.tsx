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

"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { Notice } from "@/ui/notice";

const FIRST_LOOK_MS = 800;
const LATER_LOOKS_MS = 5_000;
/** Most calls are reckoned within two seconds; so many looks take a quarter of a minute. */
const USUAL_LOOKS = 20;

/** In the place of an analysis that is not there yet: looks again by itself until it is. */
export function StillReckoning() {
  const router = useRouter();
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    const next = setTimeout(
      () => {
        router.refresh();
        setLooks(looks + 1);
      },
      looks < USUAL_LOOKS ? FIRST_LOOK_MS : LATER_LOOKS_MS,
    );
    return () => clearTimeout(next);
  }, [router, looks]);
  return (
    <>
      <Notice title="Sizewright is working out this call">
        {looks < USUAL_LOOKS ? (
          <p>Reports or the pattern have changed. The page shows what came out as soon as it is there.</p>
        ) : (
          <p>
            This takes longer than usual. You can leave the page: nothing is lost, and it is worked out in the
            background. A call with thousands of testers takes up to a minute.
          </p>
        )}
      </Notice>
      <noscript>
        <meta httpEquiv="refresh" content="3" />
      </noscript>
    </>
  );
}

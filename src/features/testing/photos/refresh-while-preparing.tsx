"use client";

import { useRouter } from "next/navigation";
import { useEffect } from "react";

const EVERY_MS = 1_500;

/** Draws the page again until every photo is prepared. */
export function RefreshWhilePreparing() {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), EVERY_MS);
    return () => clearInterval(timer);
  }, [router]);
  return null;
}

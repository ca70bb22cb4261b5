"use client";

import { useEffect } from "react";
import { Notice } from "@/ui/notice";
import { useIsOnline } from "@/ui/use-is-online";
import { forgetPages, keepPage } from "./kept-page";

interface KeptPageNoticeProps {
  readonly path: string;
  /** When the page was made, for the reader. */
  readonly readAt: string;
  /** False once the test has ended: the copy is then removed. */
  readonly mayKeep: boolean;
}

/** Keeps the page for when there is no connection, and says so where there is none. */
export function KeptPageNotice({ path, readAt, mayKeep }: KeptPageNoticeProps) {
  const isOnline = useIsOnline();
  useEffect(() => {
    if (!navigator.onLine) return;
    void (mayKeep ? keepPage(path) : forgetPages(path));
  }, [path, readAt, mayKeep]);
  if (isOnline) return null;
  return (
    <Notice title="No connection">
      <p>This is the text as you last read it, on {readAt}. Ask and report once you are connected again.</p>
    </Notice>
  );
}

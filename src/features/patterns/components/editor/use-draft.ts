"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useRef, useState } from "react";
import type { PatternDraft } from "@/engine/editing";
import { keepDraft } from "../../actions";
import { dropBackup, readBackup, writeBackup } from "./draft-backup";

export type DraftStatus =
  | { readonly kind: "resting" | "saving" | "late" }
  | { readonly kind: "saved"; readonly at: Date }
  | { readonly kind: "unsent"; readonly says: string };

interface Beginning {
  readonly patternId: string;
  readonly content: PatternDraft | null;
  readonly version: number;
  readonly baseNumber: number;
}

const PAUSE_MS = 700;
const OFFLINE = "No connection. Your edits are kept in this browser and sent when it is back.";

/** A pattern being edited, kept in the browser at once and on the server after a pause; the server's version goes with each. */
export function useDraft({ patternId, content: first, version: firstVersion, baseNumber }: Beginning) {
  const router = useRouter();
  const [content, setContent] = useState(first);
  const [status, setStatus] = useState<DraftStatus>({ kind: "resting" });
  const latest = useRef({ content: first, version: firstVersion, baseNumber });
  const kept = useRef(first);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const sending = useRef<Promise<number | null> | null>(null);

  /** Until nothing is typed that the server does not have. @returns its version there, null where it could not be kept. */
  const sendAll = useCallback(async (): Promise<number | null> => {
    while (latest.current.content !== kept.current) {
      const sent = latest.current;
      setStatus({ kind: "saving" });
      const saved = await keepDraft(patternId, sent).catch(() => ({ status: "failed" as const, says: OFFLINE }));
      if (saved.status === "failed") {
        setStatus({ kind: "unsent", says: saved.says });
        return null;
      }
      if (saved.status === "late") {
        dropBackup(patternId);
        setStatus({ kind: "late" });
        router.refresh();
        return null;
      }
      kept.current = sent.content;
      latest.current = { ...latest.current, version: saved.version };
      setStatus({ kind: "saved", at: new Date() });
    }
    dropBackup(patternId);
    return latest.current.version;
  }, [patternId, router]);

  /** Sends what is typed; one sending at a time, and the next takes whatever was typed meanwhile. */
  const send = useCallback(async (): Promise<number | null> => {
    clearTimeout(timer.current);
    sending.current ??= sendAll().finally(() => {
      sending.current = null;
    });
    return await sending.current;
  }, [sendAll]);

  const edit = useCallback(
    (next: PatternDraft | null) => {
      latest.current = { ...latest.current, content: next };
      setContent(next);
      writeBackup(patternId, latest.current);
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void send(), PAUSE_MS);
    },
    [patternId, send],
  );

  useEffect(() => {
    const backup = readBackup(patternId);
    const resume = async () => {
      if (backup === null) return;
      await Promise.resolve();
      latest.current = backup;
      setContent(backup.content);
      await send();
    };
    void resume();
    const online = () => (readBackup(patternId) ? void send() : undefined);
    window.addEventListener("online", online);
    return () => {
      window.removeEventListener("online", online);
      clearTimeout(timer.current);
    };
  }, [patternId, send]);

  return { content, status, edit, send };
}

import type { PatternDraft } from "@/engine/editing";
import { saveDraftEdits } from "../actions";
import type { DraftEdits } from "../schema";
import { afterFrame } from "./after-frame";
import { isOlderThanSaved, noteSaved, readBackup, writeBackup } from "./draft-backup";

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

export interface DraftSaver {
  /** Stores the draft in this browser once it is drawn, and on the server after a pause. */
  readonly edit: (content: PatternDraft | null) => void;
  /** @returns the version that the server has, null where the draft could not be saved. */
  readonly send: () => Promise<number | null>;
  /**
   * Sends what this browser still stores from an earlier visit, and again once the connection is back.
   *
   * @param onContent called with it.
   * @returns a function that stops listening.
   */
  readonly resume: (onContent: (content: PatternDraft | null) => void) => () => void;
}

const PAUSE_MS = 700;
const OFFLINE = "No connection. Your edits are stored in this browser and will be saved when you are online again.";

/** Saves a pattern that is being edited; the server's version goes with each save. */
export function draftSaver(
  { patternId, content, version, baseNumber }: Beginning,
  onStatus: (status: DraftStatus) => void,
): DraftSaver {
  let latest: DraftEdits = { content, version, baseNumber };
  let saved = content;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending: Promise<number | null> | null = null;
  let isLate = false;

  // A large draft takes longer to write than a key may.
  const store = () => (latest.content === saved || isLate ? undefined : writeBackup(patternId, latest));
  const storeSoon = afterFrame(store);

  const sendAll = async (): Promise<number | null> => {
    while (latest.content !== saved) {
      const sent = latest;
      latest = { ...sent, unanswered: sent.content };
      writeBackup(patternId, latest);
      onStatus({ kind: "saving" });
      const answer = await saveDraftEdits(patternId, sent).catch(() => ({ status: "failed" as const, says: OFFLINE }));
      if (answer.status === "failed") {
        onStatus({ kind: "unsent", says: answer.says });
        return null;
      }
      if (answer.status === "late") {
        isLate = true;
        writeBackup(patternId, null);
        onStatus({ kind: "late" });
        return null;
      }
      saved = sent.content;
      noteSaved(patternId, answer.version);
      latest = { ...latest, version: answer.version, unanswered: undefined };
      onStatus({ kind: "saved", at: new Date() });
    }
    writeBackup(patternId, null);
    return latest.version;
  };

  // One request at a time; the next includes everything typed in the meantime.
  const send = async (): Promise<number | null> => {
    clearTimeout(timer);
    sending ??= sendAll().finally(() => {
      sending = null;
    });
    return await sending;
  };

  const edit = (next: PatternDraft | null) => {
    latest = { ...latest, content: next };
    isLate = false;
    storeSoon();
    clearTimeout(timer);
    timer = setTimeout(() => void send(), PAUSE_MS);
  };

  const resume = (onContent: (content: PatternDraft | null) => void) => {
    const backup = readBackup(patternId);
    if (backup === null && isOlderThanSaved(patternId, latest.version)) {
      // Asked for while the last save was under way, and drawn before it was stored.
      window.location.reload();
    }
    if (backup !== null) {
      latest = backup;
      onContent(backup.content);
      void send();
    }
    const online = () => (readBackup(patternId) ? void send() : undefined);
    window.addEventListener("online", online);
    window.addEventListener("pagehide", store);
    return () => {
      store();
      window.removeEventListener("pagehide", store);
      window.removeEventListener("online", online);
      clearTimeout(timer);
    };
  };

  return { edit, send, resume };
}

import { useRouter } from "next/navigation";
import { useEffect, useRef, useState } from "react";
import { sendPhoto, type PhotoToSend } from "./send-photo";

export interface QueuedPhoto extends PhotoToSend {
  readonly state: "waiting" | "sending" | "sent" | "refused";
  /** How much of it is sent, 0 to 1. */
  readonly share: number;
  /** Why it waits or is refused; "" for nothing to say. */
  readonly says: string;
}

const CUT_OFF = "The connection was lost. It is sent again by itself.";
const MAX_WAIT_MS = 30_000;

/** Photos sent one after another; one that is cut off is sent again with the same id, so that it is stored once. */
export function usePhotoQueue() {
  const router = useRouter();
  const [queue, setQueue] = useState<readonly QueuedPhoto[]>([]);
  const waiting = useRef<PhotoToSend[]>([]);
  const isRunning = useRef(false);
  const isGone = useRef(false);
  useEffect(() => {
    isGone.current = false;
    return () => void (isGone.current = true);
  }, []);
  const change = (photoId: string, changed: Partial<QueuedPhoto>) =>
    setQueue((now) => now.map((each) => (each.photoId === photoId ? { ...each, ...changed } : each)));

  async function sendUntilAnswered(photo: PhotoToSend): Promise<void> {
    for (let attempt = 0; !isGone.current; attempt += 1) {
      change(photo.photoId, { state: "sending", share: 0 });
      const answer = await sendPhoto(photo, (share) => change(photo.photoId, { share }));
      if (answer.status === "sent") return change(photo.photoId, { state: "sent", share: 1, says: "" });
      if (answer.status === "refused") return change(photo.photoId, { state: "refused", says: answer.says });
      change(photo.photoId, { state: "waiting", says: CUT_OFF });
      await onlineOrAfter(Math.min(MAX_WAIT_MS, 1_000 * 2 ** attempt));
    }
  }

  async function run(): Promise<void> {
    if (isRunning.current) return;
    isRunning.current = true;
    for (let photo = waiting.current.shift(); photo && !isGone.current; photo = waiting.current.shift()) {
      await sendUntilAnswered(photo);
      router.refresh();
    }
    isRunning.current = false;
  }

  const add = (photos: readonly PhotoToSend[], refused: readonly QueuedPhoto[]) => {
    const added = photos.map((photo) => ({ ...photo, state: "waiting", share: 0, says: "" }) as const);
    setQueue((now) => [...now.filter(({ state }) => state !== "sent"), ...added, ...refused]);
    waiting.current.push(...photos);
    void run();
  };
  return { queue, add };
}

/** Waits until the connection is back, or for a while: browsers do not always know. */
function onlineOrAfter(waitMs: number): Promise<void> {
  return new Promise((resolve) => {
    const go = () => {
      clearTimeout(late);
      window.removeEventListener("online", go);
      resolve();
    };
    const late = setTimeout(go, waitMs);
    window.addEventListener("online", go);
  });
}

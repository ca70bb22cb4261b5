import type { QueuedPhoto } from "./use-photo-queue";

const STATE_WORDS = { waiting: "waiting", sending: "sending", sent: "sent", refused: "not sent" } as const;

/** Photos on their way, each with its progress. */
export function SendingPhotos({ queue }: { readonly queue: readonly QueuedPhoto[] }) {
  if (queue.length === 0) return null;
  return (
    <ul aria-label="Photos being sent" aria-live="polite" className="mt-5 grid gap-3">
      {queue.map(({ photoId, file, state, share, says }) => (
        <li key={photoId} className="min-w-0">
          <span className="block truncate text-sm">
            <bdi>{file.name}</bdi>: {STATE_WORDS[state]}
          </span>
          {state === "sending" || state === "waiting" ? (
            <progress aria-label={`Sending ${file.name}`} value={share} max={1} className="w-full accent-thread" />
          ) : null}
          {says === "" ? null : <span className="block text-sm font-semibold text-thread">{says}</span>}
        </li>
      ))}
    </ul>
  );
}

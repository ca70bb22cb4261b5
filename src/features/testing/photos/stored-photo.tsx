import { PhotoImage } from "./photo-image";

interface StoredPhotoProps {
  readonly photoId: string;
  readonly state: "received" | "ready" | "failed";
  /** Why it failed. */
  readonly reason: string | null;
  readonly alt: string;
}

/** A photo as whoever sent it sees it: before its sizes are made, and where they could not be made, too. */
export function StoredPhoto({ photoId, state, reason, alt }: StoredPhotoProps) {
  switch (state) {
    case "received":
      return <p className="grid aspect-square place-items-center bg-band p-2 text-center text-sm">Being prepared …</p>;
    case "failed":
      return (
        <p className="aspect-square overflow-auto bg-thread-tint p-2 text-sm wrap-anywhere">
          <span className="font-semibold">▲ Not stored.</span> {reason}
        </p>
      );
    case "ready":
      return <PhotoImage photoId={photoId} width="9rem" alt={alt} shape="aspect-square" />;
  }
}

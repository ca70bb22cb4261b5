import { PROBLEM_SENTENCES } from "./photo-copy";
import type { PhotoOwnerId } from "./photo-schema";
import { PHOTO_PROBLEMS, type PhotoView } from "./photo-views";

export interface PhotoToSend {
  /** Stays the same however often it is sent. */
  readonly photoId: string;
  readonly owner: PhotoOwnerId;
  readonly view: PhotoView;
  readonly note: string;
  /** The trouble spot that it shows; left out for none. */
  readonly troubleId?: string | undefined;
  readonly file: File;
}

export type SentPhotoAnswer =
  { readonly status: "sent" } | { readonly status: "refused"; readonly says: string } | { readonly status: "cut-off" };

const LOST = "You no longer have access to this test on this device. Open your link again.";
const SAMPLE_LOST = "You can no longer add photos to this pattern. Reload the page to see why.";

/** Sends a photo once. @param onProgress told how much of it is sent, 0 to 1. */
export function sendPhoto(
  { file, photoId, owner, view, note, troubleId }: PhotoToSend,
  onProgress: (share: number) => void,
): Promise<SentPhotoAnswer> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    const query = new URLSearchParams({
      ...owner,
      photoId,
      view,
      note,
      ...(troubleId === undefined ? {} : { troubleId }),
    });
    request.open("POST", `/photos/send?${query.toString()}`);
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.upload.onprogress = ({ loaded, total }) => onProgress(total === 0 ? 0 : loaded / total);
    request.onerror = () => resolve({ status: "cut-off" });
    request.ontimeout = () => resolve({ status: "cut-off" });
    request.onabort = () => resolve({ status: "cut-off" });
    request.onload = () => resolve(answerOf(request, "testerId" in owner ? LOST : SAMPLE_LOST));
    request.send(file);
  });
}

function answerOf({ status, responseText }: XMLHttpRequest, lost: string): SentPhotoAnswer {
  if (status >= 200 && status < 300) return { status: "sent" };
  if (status >= 500) return { status: "cut-off" };
  if (status === 413) return { status: "refused", says: PROBLEM_SENTENCES.large };
  const problem = PHOTO_PROBLEMS.find((each) => responseText === each);
  return { status: "refused", says: problem === undefined ? lost : PROBLEM_SENTENCES[problem] };
}

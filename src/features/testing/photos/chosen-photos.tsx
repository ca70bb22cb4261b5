"use client";

import dynamic from "next/dynamic";
import { useCallback, useState } from "react";
import { Button } from "@/ui/button";

export interface ChosenPhoto {
  readonly photoId: string;
  readonly file: File;
  readonly isChanged: boolean;
}

interface ChosenPhotosProps {
  readonly photos: readonly ChosenPhoto[];
  readonly onChange: (photos: readonly ChosenPhoto[]) => void;
}

// Only those who crop or blur need it.
const PhotoChanger = dynamic(() => import("./photo-changer").then((loaded) => loaded.PhotoChanger), { ssr: false });

/** Photos that are chosen and not sent yet; each can be cropped or blurred first. */
export function ChosenPhotos({ photos, onChange }: ChosenPhotosProps) {
  const [opened, setOpened] = useState<string | null>(null);
  if (photos.length === 0) return null;
  const replace = (photoId: string, file: File) => {
    onChange(photos.map((photo) => (photo.photoId === photoId ? { photoId, file, isChanged: true } : photo)));
    setOpened(null);
  };
  return (
    <ul aria-label="Photos to send" className="mt-3 grid gap-3">
      {photos.map(({ photoId, file, isChanged }) => (
        <li key={photoId} className="min-w-0 border-t border-line pt-3">
          <div className="flex items-center gap-3">
            <Preview file={file} />
            <span className="min-w-0 flex-1 text-sm">
              <bdi className="block truncate">{file.name}</bdi>
              {isChanged ? <span className="text-soft">changed</span> : null}
            </span>
            {opened === photoId ? null : (
              <Button look="quiet" onClick={() => setOpened(photoId)}>
                Crop or blur<span className="sr-only"> {file.name}</span>
              </Button>
            )}
          </div>
          {opened === photoId ? (
            <PhotoChanger
              file={file}
              onDone={(changed) => replace(photoId, changed)}
              onCancel={() => setOpened(null)}
            />
          ) : null}
        </li>
      ))}
    </ul>
  );
}

function Preview({ file }: { readonly file: File }) {
  const show = useCallback(
    (picture: HTMLImageElement) => {
      const address = URL.createObjectURL(file);
      picture.src = address;
      return () => URL.revokeObjectURL(address);
    },
    [file],
  );
  // eslint-disable-next-line @next/next/no-img-element
  return <img ref={show} alt="" className="size-14 shrink-0 rounded-sm bg-band object-cover" />;
}

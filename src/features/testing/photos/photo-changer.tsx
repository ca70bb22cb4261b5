"use client";

import "react-image-crop/dist/ReactCrop.css";
import { useCallback, useEffect, useRef, useState } from "react";
import { ReactCrop, type PercentCrop } from "react-image-crop";
import { Button } from "@/ui/button";
import { blurIn, cropTo, drawFile, toFile } from "./change-picture";

interface PhotoChangerProps {
  readonly file: File;
  readonly onDone: (changed: File) => void;
  readonly onCancel: () => void;
}

/** There is always a selection, so that it can be moved by keyboard. */
const MIDDLE: PercentCrop = { unit: "%", x: 30, y: 10, width: 40, height: 30 };

const ARIA_LABELS = {
  cropArea: "Selection. Move it with the arrow keys; Tab leads to its edges and corners.",
  ...{ nwDragHandle: "Top left corner", nDragHandle: "Top edge", neDragHandle: "Top right corner" },
  ...{ eDragHandle: "Right edge", seDragHandle: "Bottom right corner", sDragHandle: "Bottom edge" },
  ...{ swDragHandle: "Bottom left corner", wDragHandle: "Left edge" },
};

/** Crops a photo or blurs a part of it, before it leaves the device. */
export function PhotoChanger({ file, onDone, onCancel }: PhotoChangerProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const area = useRef<HTMLDivElement>(null);
  const [crop, setCrop] = useState(MIDDLE);
  const [state, setState] = useState<"reading" | "same" | "changed" | "unreadable">("reading");
  const [says, setSays] = useState("");
  const read = useCallback(() => {
    if (canvas.current === null) return;
    drawFile(canvas.current, file).then(
      () => setState("same"),
      () => setState("unreadable"),
    );
  }, [file]);
  useEffect(() => {
    area.current?.focus();
    read();
  }, [read]);
  const change = (how: (picture: HTMLCanvasElement) => void, done: string) => {
    if (canvas.current === null) return;
    how(canvas.current);
    setCrop(MIDDLE);
    setState("changed");
    setSays(done);
  };
  const startAgain = () => {
    setSays("");
    setCrop(MIDDLE);
    read();
  };
  const use = async () => {
    if (canvas.current !== null) onDone(await toFile(canvas.current, file.name));
  };
  if (state === "unreadable")
    return (
      <div className="mt-2 grid gap-2">
        <p role="alert">This photo can’t be opened here. Send it as it is, or choose another one.</p>
        <div>
          <Button look="quiet" onClick={onCancel}>
            Close
          </Button>
        </div>
      </div>
    );
  const isReady = state !== "reading" && crop.width > 0 && crop.height > 0;
  return (
    <div ref={area} tabIndex={-1} role="group" aria-label={`Crop or blur ${file.name}`} className="mt-2 grid gap-3">
      <p className="text-sm text-soft">
        Drag over the photo to select a part of it. Then keep only that part, or blur it: a face, for example.
      </p>
      <div>
        <ReactCrop crop={crop} onChange={(_pixels, part) => setCrop(part)} ariaLabels={ARIA_LABELS}>
          <canvas ref={canvas} className="block max-h-[70vh] max-w-full" />
        </ReactCrop>
      </div>
      <p role="status" className="text-sm empty:hidden">
        {says}
      </p>
      <div className="flex flex-wrap gap-2">
        <Button look="quiet" disabled={!isReady} onClick={() => change((picture) => blurIn(picture, crop), "Blurred.")}>
          Blur selection
        </Button>
        <Button look="quiet" disabled={!isReady} onClick={() => change((picture) => cropTo(picture, crop), "Cropped.")}>
          Crop to selection
        </Button>
        {state === "changed" ? (
          <Button look="plain" onClick={startAgain}>
            Start again
          </Button>
        ) : null}
      </div>
      <div className="flex flex-wrap gap-2">
        <Button disabled={state !== "changed"} onClick={() => void use()}>
          Use changed photo
        </Button>
        <Button look="plain" onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </div>
  );
}

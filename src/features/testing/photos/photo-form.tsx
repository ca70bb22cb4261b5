"use client";

import { useState, type ReactNode, type SyntheticEvent } from "react";
import { Button } from "@/ui/button";
import { Field, TextInput } from "@/ui/field";
import { ChosenPhotos, type ChosenPhoto } from "./chosen-photos";
import { PROBLEM_SENTENCES, VIEW_LABELS } from "./photo-copy";
import type { PhotoOwnerId } from "./photo-schema";
import { MAX_PHOTO_BYTES, MAX_PHOTO_NOTE_LENGTH, MAX_PHOTOS, type PhotoProblem, type PhotoView } from "./photo-views";
import type { PhotoToSend } from "./send-photo";
import { SendingPhotos } from "./sending-photos";
import { usePhotoQueue, type QueuedPhoto } from "./use-photo-queue";

interface PhotoFormProps {
  readonly owner: PhotoOwnerId;
  /** What the photos may show. */
  readonly views: readonly PhotoView[];
  /** The trouble spot that they show: then nothing more is asked about them. */
  readonly troubleId?: string;
  /** Shown next to the button. */
  readonly beside?: ReactNode;
  /** How many are stored already. */
  readonly stored: number;
  /** Makes the ids of what is sent without scripts. */
  readonly formKey: string;
}

/** Chooses photos and sends them, each with its progress. Works without scripts, too. */
export function PhotoForm({ owner, views, troubleId, beside, stored, formKey }: PhotoFormProps) {
  const { queue, add } = usePhotoQueue();
  const [chosen, setChosen] = useState<readonly ChosenPhoto[]>([]);
  const [problem, setProblem] = useState<PhotoProblem | null>(null);
  const send = (event: SyntheticEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const fields = new FormData(form);
    // Those chosen before scripts ran are not in the list.
    const photos = chosen.length > 0 ? chosen : fields.getAll("photo").flatMap(asChosen);
    const waiting = queue.filter(({ state }) => state === "waiting" || state === "sending").length;
    const found = photos.length === 0 ? "none" : stored + waiting + photos.length > MAX_PHOTOS ? "many" : null;
    setProblem(found);
    if (found !== null) return;
    const note = String(fields.get("note") ?? "");
    const view = views.find((each) => each === fields.get("view")) ?? "front";
    add(...sorted(photos.map(({ photoId, file }): PhotoToSend => ({ photoId, owner, view, note, troubleId, file }))));
    setChosen([]);
    // What is sent next often shows the same.
    const input = form.elements.namedItem("photo");
    if (input instanceof HTMLInputElement) input.value = "";
  };
  return (
    <>
      <form
        method="post"
        action="/photos/send"
        encType="multipart/form-data"
        onSubmit={send}
        className="group grid gap-5"
      >
        {Object.entries(owner).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <input type="hidden" name="formKey" value={formKey} />
        {troubleId === undefined ? (
          <WhatTheyShow views={views} />
        ) : (
          <>
            <input type="hidden" name="view" value="problem" />
            <input type="hidden" name="troubleId" value={troubleId} />
          </>
        )}
        <div>
          <label htmlFor="photo" className="block font-semibold">
            Photos
          </label>
          <p id="photo-hint" className="mb-2 text-sm text-soft">
            From your camera or your files, several at once: JPEG, PNG or WebP, up to {MAX_PHOTO_BYTES / 1e6} MB each.
            Where and when they were taken is removed.
            <span className="noscript:hidden"> Before you send them, you can crop them or blur a face.</span>
          </p>
          <input
            id="photo"
            name="photo"
            type="file"
            multiple
            accept="image/jpeg,image/png,image/webp"
            aria-describedby="photo-hint photo-problem"
            onChange={({ target }) => {
              setProblem(null);
              setChosen(Array.from(target.files ?? []).flatMap(asChosen));
            }}
            className="block w-full min-w-0 py-2 file:mr-3 file:min-h-11 file:rounded-md file:border file:border-line-strong file:bg-sheet file:px-4 file:font-semibold"
          />
          <p id="photo-problem" role="alert" className="font-semibold text-thread empty:hidden">
            {problem === null ? null : `▲ ${PROBLEM_SENTENCES[problem]}`}
          </p>
          <ChosenPhotos photos={chosen} onChange={setChosen} />
        </div>
        <div className="flex flex-wrap items-center gap-x-4 gap-y-2">
          <Button type="submit">Send photos</Button>
          {beside}
        </div>
      </form>
      <SendingPhotos queue={queue} />
    </>
  );
}

function WhatTheyShow({ views }: Pick<PhotoFormProps, "views">) {
  return (
    <>
      <fieldset>
        <legend className="mb-2 font-semibold">What the photos show</legend>
        <div className="grid grid-cols-[repeat(auto-fit,minmax(7rem,1fr))] gap-1.5">
          {views.map((each) => (
            <label key={each} className="choice gap-3 px-3 py-2">
              <input type="radio" name="view" value={each} defaultChecked={each === "front"} />
              <span>{VIEW_LABELS[each]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {/* Without scripts, too, it is there only for a problem. */}
      <div className="hidden group-has-[[value=problem]:checked]:block">
        <Field id="note" label="What is wrong there">
          <TextInput id="note" name="note" dir="auto" maxLength={MAX_PHOTO_NOTE_LENGTH} />
        </Field>
      </div>
    </>
  );
}

function asChosen(file: FormDataEntryValue): ChosenPhoto[] {
  return file instanceof File && file.name !== "" ? [{ photoId: newId(), file, isChanged: false }] : [];
}

/** Those to send, and those that need not be sent to be refused. */
function sorted(chosen: readonly PhotoToSend[]): [PhotoToSend[], QueuedPhoto[]] {
  const problemOf = ({ size }: File) => (size === 0 ? "empty" : size > MAX_PHOTO_BYTES ? "large" : null);
  const refused = chosen.flatMap((photo): QueuedPhoto[] => {
    const problem = problemOf(photo.file);
    return problem === null ? [] : [{ ...photo, state: "refused", share: 0, says: PROBLEM_SENTENCES[problem] }];
  });
  return [chosen.filter(({ file }) => problemOf(file) === null), refused];
}

/** `crypto.randomUUID` is missing where the page is not served encrypted, as in a home network. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const hex = Array.from(bytes, (byte, index) =>
    (index === 6 ? (byte & 0x0f) | 0x40 : index === 8 ? (byte & 0x3f) | 0x80 : byte).toString(16).padStart(2, "0"),
  ).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import type { PatternDocument } from "@/engine/pattern";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { allowedWords, VIEW_LABELS } from "./photo-copy";
import { PhotoImage } from "./photo-image";
import { PHOTO_VIEWS, type PhotoView } from "./photo-schema";
import type { SheetPhoto } from "./photo-sheet-data";

interface PhotoSheetProps {
  readonly callId: string;
  readonly photos: readonly SheetPhoto[];
  readonly sizes: PatternDocument["sizes"];
  /** Shown alone; left out: all. */
  readonly size?: string | undefined;
  readonly view?: PhotoView | undefined;
}

/** Every photo of a test, by size and by what it shows. */
export function PhotoSheet({ callId, photos, sizes, size, view }: PhotoSheetProps) {
  if (photos.length === 0)
    return (
      <EmptyState title="No photos yet">
        <p>Testers can add photos of their swatch and their garment to their report. They appear here, by size.</p>
      </EmptyState>
    );
  const withPhotos = sizes.filter(({ id }) => photos.some((photo) => photo.size === id));
  const groups = withPhotos
    .filter(({ id }) => size === undefined || id === size)
    .map(({ id, label }) => ({
      ...{ id, label },
      photos: PHOTO_VIEWS.filter((each) => view === undefined || each === view).flatMap((each) =>
        photos.filter((photo) => photo.size === id && photo.view === each),
      ),
    }))
    .filter((group) => group.photos.length > 0);
  return (
    <>
      <Filters {...{ callId, size, view }} sizes={withPhotos} />
      {groups.length === 0 ? <p className="text-soft">No photos match. Choose another size or view.</p> : null}
      {groups.map((group) => (
        <Section key={group.id} title={`Size ${group.label}`}>
          <ul
            aria-label={`Photos of size ${group.label}`}
            className="grid grid-cols-[repeat(auto-fill,minmax(min(100%,11rem),1fr))] gap-5"
          >
            {group.photos.map((photo) => (
              <SheetEntry key={photo.photoId} photo={photo} callId={callId} />
            ))}
          </ul>
        </Section>
      ))}
    </>
  );
}

function Filters({ callId, sizes, size, view }: Omit<PhotoSheetProps, "photos">) {
  const hrefOf = (to: { size: string | undefined; view: PhotoView | undefined }) => {
    const query = new URLSearchParams();
    if (to.size !== undefined) query.set("size", to.size);
    if (to.view !== undefined) query.set("view", to.view);
    return `${callPageHref(callId, "photos")}?${query.toString()}`;
  };
  const sizeChoice = (id: string | undefined, label: string) => ({
    ...{ href: hrefOf({ size: id, view }), label, current: id === size },
  });
  const viewChoice = (id: PhotoView | undefined, label: string) => ({
    ...{ href: hrefOf({ size, view: id }), label, current: id === view },
  });
  return (
    <div className="mb-8 grid gap-3">
      <ChoiceLinks
        label="Size"
        choices={[sizeChoice(undefined, "All sizes"), ...sizes.map(({ id, label }) => sizeChoice(id, label))]}
      />
      <ChoiceLinks
        label="View"
        choices={[viewChoice(undefined, "All views"), ...PHOTO_VIEWS.map((id) => viewChoice(id, VIEW_LABELS[id]))]}
      />
    </div>
  );
}

function SheetEntry({ photo, callId }: { readonly photo: SheetPhoto; readonly callId: string }) {
  const { photoId, view, name, note, testerId, allowed, creditName } = photo;
  return (
    <li className="min-w-0">
      <PhotoImage photoId={photoId} width="11rem" alt={`${VIEW_LABELS[view]}, by ${name}`} shape="aspect-[4/5]" />
      <p className="mt-1 font-semibold">{VIEW_LABELS[view]}</p>
      <Link href={`/calls/${callId}/progress/${testerId}`} prefetch={false} className="text-link wrap-anywhere">
        <bdi>{name}</bdi>
      </Link>
      {note === "" ? null : (
        <p dir="auto" className="text-sm wrap-anywhere">
          {note}
        </p>
      )}
      <p className="text-sm text-soft wrap-anywhere">{allowedWords(allowed, creditName)}</p>
    </li>
  );
}

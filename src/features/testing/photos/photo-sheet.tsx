import Link from "next/link";
import type { PatternDocument } from "@/engine/pattern";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { OneButtonForm } from "@/ui/one-button-form";
import { Paging } from "@/ui/paging";
import { testerPageHref } from "@/features/calls/call-pages";
import { Section } from "@/ui/section";
import { setShown } from "./photo-actions";
import { allowedWords, VIEW_LABELS } from "./photo-copy";
import { PhotoImage } from "./photo-image";
import type { PhotoSheetQuery } from "./photo-schema";
import { PHOTO_VIEWS, type PhotoView } from "./photo-views";
import type { SheetPhoto } from "./photo-sheet-data";
import { sheetHref, sheetPage } from "./sheet-page";

interface PhotoSheetProps {
  readonly callId: string;
  readonly photos: readonly SheetPhoto[];
  readonly sizes: PatternDocument["sizes"];
  readonly query: PhotoSheetQuery;
  readonly mayEdit: boolean;
}

/** The photos of a test, by size and by what they show, a page at a time. */
export function PhotoSheet({ callId, photos, sizes, query, mayEdit }: PhotoSheetProps) {
  if (photos.length === 0)
    return (
      <EmptyState title="No photos yet">
        <p>Testers can add photos of their swatch and their garment to their report. They appear here, by size.</p>
      </EmptyState>
    );
  const { sizes: withPhotos, groups, matching, list } = sheetPage(photos, sizes, query);
  return (
    <>
      <Filters {...{ callId, query }} sizes={withPhotos} />
      <p className="numbers mb-6 text-soft">
        {matching === 0
          ? "No photos match. Choose another size or view."
          : matching === 1
            ? "1 photo"
            : `${matching} photos`}
      </p>
      {groups.map((group) => (
        <Section key={group.id} title={`Size ${group.label}`}>
          <ul
            aria-label={`Photos of size ${group.label}`}
            className="grid grid-cols-[repeat(auto-fill,minmax(min(100%,8.5rem),1fr))] gap-4 sm:grid-cols-[repeat(auto-fill,minmax(11rem,1fr))] sm:gap-5"
          >
            {group.photos.map((photo) => (
              <SheetEntry key={photo.photoId} {...{ photo, callId, mayEdit }} />
            ))}
          </ul>
        </Section>
      ))}
      <Paging label="Pages of photos" {...list} hrefOf={(page) => sheetHref(callId, { ...query, page })} />
    </>
  );
}

function Filters({ callId, sizes, query: { size, view } }: Omit<PhotoSheetProps, "photos" | "mayEdit">) {
  const sizeChoice = (id: string | undefined, label: string) => ({
    ...{ href: sheetHref(callId, { size: id, view }), label, current: id === size },
  });
  const viewChoice = (id: PhotoView | undefined, label: string) => ({
    ...{ href: sheetHref(callId, { size, view: id }), label, current: id === view },
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

interface SheetEntryProps extends Pick<PhotoSheetProps, "callId" | "mayEdit"> {
  readonly photo: SheetPhoto;
}

function SheetEntry({ photo, callId, mayEdit }: SheetEntryProps) {
  const { photoId, view, name, note, testerId, allowed, creditName, isShown } = photo;
  return (
    <li className="min-w-0">
      <PhotoImage photoId={photoId} width="11rem" alt={`${VIEW_LABELS[view]}, by ${name}`} shape="aspect-[4/5]" />
      <p className="mt-1 font-semibold">{VIEW_LABELS[view]}</p>
      <Link href={testerPageHref(callId, testerId)} prefetch={false} className="text-link wrap-anywhere">
        <bdi>{name}</bdi>
      </Link>
      {note === "" ? null : (
        <p dir="auto" className="line-clamp-4 text-sm wrap-anywhere">
          {note}
        </p>
      )}
      <p className="text-sm text-soft wrap-anywhere">{allowedWords(allowed, creditName)}</p>
      {isShown ? <p className="text-sm font-semibold">On the pattern’s page</p> : null}
      {isShown === null || !mayEdit ? null : (
        <OneButtonForm
          action={setShown}
          sends={{ callId, photoId, isShown: isShown ? "no" : "yes" }}
          button={isShown ? "Take off the page" : "Show on the page"}
          waiting="One moment …"
          about={`${VIEW_LABELS[view]}, by ${name}`}
          look="plain"
        />
      )}
    </li>
  );
}

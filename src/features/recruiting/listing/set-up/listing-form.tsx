"use client";

import { useEffect, useRef } from "react";
import type { EditedListing } from "../edited-data";
import type { FieldFault } from "../read-typed";
import { AnswerNotice } from "./answer-notice";
import { ListingButtons } from "./listing-buttons";
import { ListingFields, type ListingContent } from "./listing-fields";
import { listingFormState } from "./listing-form-state";
import { useListingForm } from "./use-listing-form";

export interface ListingFormProps extends ListingContent {
  readonly callId: string;
  readonly listing: EditedListing;
  /** What must be fixed before a draft can be published. */
  readonly open: readonly FieldFault[];
  readonly mayEdit: boolean;
}

/** The form to write, publish and change the listing of a call. */
export function ListingForm(props: ListingFormProps) {
  const { callId, listing, mayEdit } = props;
  const { answer, formProps, pending } = useListingForm();
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (answer !== undefined && answer.status !== "saved") notice.current?.focus();
  }, [answer]);
  const isPublished = listing.publishedAt !== null;
  return (
    <>
      <div ref={notice} tabIndex={-1} className="outline-none">
        <AnswerNotice callId={callId} answer={answer} isPublished={isPublished} />
      </div>
      <form {...formProps}>
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="version" value={answer?.version ?? listing.version} />
        <fieldset disabled={!mayEdit} className="min-w-0">
          <ListingFields {...props} state={listingFormState(listing.typed, { answer, sizes: props.sizes })} />
        </fieldset>
        {mayEdit ? (
          <ListingButtons isPublished={isPublished} open={props.open} answer={answer} pending={pending} />
        ) : null}
      </form>
    </>
  );
}

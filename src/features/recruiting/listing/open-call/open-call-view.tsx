import Link from "next/link";
import type { ReactNode } from "react";
import type { Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { Fold } from "@/ui/fold";
import { Notice } from "@/ui/notice";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import type { OpenCallPage } from "../loaders";
import { YOUNGEST_AGE } from "../schema";
import { openCallHref, sizesWords } from "./open-call-copy";
import { CallDays } from "./call-days";
import { FinishedBySize } from "./finished-by-size";
import { OpenCallState } from "./open-call-state";
import { SizePicker } from "./size-picker";
import { SizeSpots } from "./size-spots";

interface OpenCallViewProps {
  readonly page: OpenCallPage;
  readonly unit: LengthUnit;
  /** The size that is shown; undefined if the pattern has none. */
  readonly size: Size | undefined;
  /** The designer's photos of their sample; null if there are none. */
  readonly photos: ReactNode;
  /** Testers' photos that the designer shows; null if there are none. */
  readonly testerPhotos: ReactNode;
  /** A drawing of the garment, if there is one. */
  readonly drawing: ReactNode;
  /** How much yarn the shown size needs; null if it is not known yet. */
  readonly yarn: ReactNode;
}

/** The public page of a tester call. */
export function OpenCallView({ page, unit, size, photos, testerPhotos, drawing, yarn }: OpenCallViewProps) {
  const { listing, application } = page;
  const { callId, pattern, document } = listing;
  const mayApply = listing.taking === "open" && application === null;
  const apply = mayApply ? <ButtonLink href={`/open-calls/${callId}/apply`}>Apply to test</ButtonLink> : null;
  return (
    <Page
      above={<>Tester call{listing.isDemo ? " · made up for the demo" : null}</>}
      title={listing.title}
      intro={
        <p>
          <bdi>{listing.designer}</bdi> is looking for testers for <bdi>{pattern.name}</bdi>, a {pattern.craft} pattern{" "}
          {sizesWords(pattern)}.
        </p>
      }
      actions={apply}
    >
      <OpenCallState page={page} />
      {listing.pieces === null ? null : (
        <Notice title={`This test covers only part of the garment: ${listing.pieces}`}>
          <p>Testers swatch, make and measure nothing else.</p>
        </Notice>
      )}
      <div className="mb-10 grid items-start gap-8 lg:grid-cols-[3fr_2fr]">
        <div className="grid gap-6">
          {document.gives === "" ? null : (
            <section aria-label="Reward">
              <p className="font-semibold">What you get</p>
              <Words text={document.gives} />
            </section>
          )}
          <CallDays listing={listing} />
          {photos === null ? null : drawing}
        </div>
        {photos === null ? drawing : <div className="max-lg:order-first">{photos}</div>}
      </div>
      {size === undefined ? null : <Sizes {...{ listing, size, unit, yarn }} />}
      {testerPhotos}
      <ListingText title="About this test" text={document.introduction} />
      <ListingText title="What you do" text={document.asks} />
      <ListingText title="Needle or hook" text={document.tools} />
      <ListingText title="What you agree to" text={listing.agreement.text} />
      <Section title="Who sees what you send">
        <div className="max-w-3xl">
          <p>
            Only <bdi>{listing.designer}</bdi> and the helpers of this pattern see your measurements, your name and your
            e-mail address. They use them to find you a size and to test this pattern, for nothing else. You can see
            your data, withdraw and delete it at any time. You do not need an account. You must be{" "}
            {document.notice?.minimumAge ?? YOUNGEST_AGE} or over to apply.
          </p>
          <p className="mt-3">
            <Link href={`/open-calls/${callId}/privacy`} className="text-link">
              Privacy notice
            </Link>
          </p>
        </div>
      </Section>
      {apply}
      {page.isDesigner ? (
        <p className="mt-8">
          <Link href={callPageHref(callId, "setUp")} className="text-link">
            Edit the listing
          </Link>
        </p>
      ) : null}
    </Page>
  );
}

interface SizesProps extends Pick<OpenCallViewProps, "unit" | "yarn"> {
  readonly listing: OpenCallPage["listing"];
  readonly size: Size;
}

function Sizes({ listing, size, unit, yarn }: SizesProps) {
  const units = (["cm", "in"] as const).map((choice) => ({
    href: openCallHref(listing.callId, { size: size.id, unit: choice }),
    label: choice,
    current: choice === unit,
  }));
  return (
    <div id="sizes" className="scroll-mt-4">
      <Section
        title="Sizes"
        intro="Choose a size to see what it measures."
        actions={<ChoiceLinks label="Unit" choices={units} />}
      >
        <SizePicker {...{ listing, size, unit, yarn }} />
        <div className="mt-6">
          <Fold title="All sizes side by side">
            <SizeSpots listing={listing} unit={unit} />
            {listing.tested.measurements.length > 0 ? (
              <div className="mt-6">
                <FinishedBySize pattern={listing.tested} unit={unit} />
              </div>
            ) : null}
          </Fold>
        </div>
      </Section>
    </div>
  );
}

function ListingText({ title, text }: { readonly title: string; readonly text: string }) {
  if (text === "") return null;
  return (
    <Section title={title}>
      <Words text={text} />
    </Section>
  );
}

function Words({ text }: { readonly text: string }) {
  return (
    <div dir="auto" className="max-w-3xl whitespace-pre-wrap wrap-anywhere">
      {text}
    </div>
  );
}

import Link from "next/link";
import type { ReactNode } from "react";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { Page } from "@/ui/page";
import { Section } from "@/ui/section";
import type { OpenCallPage } from "../loaders";
import { sizesWords } from "./open-call-copy";
import { CallDays } from "./call-days";
import { FinishedBySize } from "./finished-by-size";
import { OpenCallState } from "./open-call-state";
import { SizeSpots } from "./size-spots";

interface OpenCallViewProps {
  readonly page: OpenCallPage;
  readonly unit: LengthUnit;
  /** A picture of the garment, if there is one. */
  readonly drawing: ReactNode;
}

/** The public page of a tester call. */
export function OpenCallView({ page, unit, drawing }: OpenCallViewProps) {
  const { listing, application } = page;
  const { callId, pattern, document } = listing;
  const mayApply = listing.taking === "open" && application === null;
  const apply = mayApply ? <ButtonLink href={`/open-calls/${callId}/apply`}>Apply to test</ButtonLink> : null;
  const units = (["cm", "in"] as const).map((choice) => ({
    href: `/open-calls/${callId}?unit=${choice}`,
    label: choice,
    current: choice === unit,
  }));
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
      <div className="mb-12 grid items-start gap-8 lg:grid-cols-[3fr_2fr]">
        <div className="grid gap-8">
          {document.introduction === "" ? null : <Words text={document.introduction} />}
          <CallDays listing={listing} />
        </div>
        {drawing}
      </div>
      <Section title="Sizes and spots" actions={<ChoiceLinks label="Unit" choices={units} />}>
        <SizeSpots listing={listing} unit={unit} />
      </Section>
      {pattern.measurements.length > 0 ? (
        <Section title="Finished measurements" intro="What the garment measures if it is made as in the pattern.">
          <FinishedBySize pattern={pattern} unit={unit} />
        </Section>
      ) : null}
      <div className="grid gap-x-12 lg:grid-cols-2">
        <ListingText title="What you do" text={document.asks} />
        <ListingText title="What you get" text={document.gives} />
        <ListingText title="Yarn" text={document.yarn} />
        <ListingText title="Needle or hook" text={document.tools} />
      </div>
      <ListingText title="What you agree to" text={listing.agreement.text} />
      <Section title="Who sees what you send">
        <div className="max-w-3xl">
          <p>
            Only <bdi>{listing.designer}</bdi> and the helpers of this pattern see your measurements, your name and your
            e-mail address. They use them to find you a size and to test this pattern, for nothing else. You can see
            your data, withdraw and delete it at any time. You do not need an account. You must be 18 or over to apply.
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

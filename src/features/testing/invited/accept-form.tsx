"use client";

import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, Select } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { acceptTest } from "./invited-actions";
import { AsWhom } from "./as-whom";
import { ZoneSelect } from "./zone-select";

interface AcceptFormProps {
  readonly link: string;
  readonly craft: "crochet" | "knitting";
  readonly unit: "cm" | "in";
  readonly terms: "us" | "uk";
  readonly timeZone: string;
  readonly hasOwnZone: boolean;
  readonly zones: readonly string[];
  /** What they agree to by accepting; null for nothing. */
  readonly agreement: { readonly version: number; readonly text: string } | null;
  /** Who wears the garment, as far as is known; null where it is not asked. */
  readonly wearer: "self" | "child" | null;
  /** Name of the signed-in person, who can choose to use their account. */
  readonly viewerName: string | null;
}

/** Accepts an invitation, with the units, terms and time zone for the tester's pages. */
export function AcceptForm(props: AcceptFormProps) {
  const { link, craft, unit, terms, timeZone, hasOwnZone, zones, agreement, wearer, viewerName } = props;
  const { answer: failed, isSending, formProps } = useHandedForm(acceptTest);
  return (
    <form {...formProps}>
      <input type="hidden" name="link" value={link} />
      <div className="grid gap-x-4 sm:grid-cols-2">
        <Field id="accept-unit" label="Lengths in" hint="You can type either.">
          <Select id="accept-unit" name="unit" defaultValue={unit} aria-describedby={describedBy("accept-unit")}>
            <option value="cm">centimetres</option>
            <option value="in">inches</option>
          </Select>
        </Field>
        {craft === "crochet" ? (
          <Field id="accept-terms" label="Stitch names" hint="US sc is UK dc.">
            <Select id="accept-terms" name="terms" defaultValue={terms} aria-describedby={describedBy("accept-terms")}>
              <option value="us">US</option>
              <option value="uk">UK</option>
            </Select>
          </Field>
        ) : (
          <input type="hidden" name="terms" value={terms} />
        )}
      </div>
      <Field id="accept-zone" label="Time zone" hint="Dates are shown in this time zone.">
        <ZoneSelect
          id="accept-zone"
          name="timeZone"
          zones={zones}
          zone={timeZone}
          isOwn={hasOwnZone}
          describedBy={describedBy("accept-zone")}
        />
      </Field>
      {wearer === null ? null : <WhoWears wearer={wearer} />}
      {agreement === null ? null : <AgreeAnew agreement={agreement} />}
      {viewerName === null ? null : <AsWhom viewerName={viewerName} />}
      <Button type="submit" disabled={isSending}>
        {isSending ? "Accepting …" : "Accept"}
      </Button>
      <FieldErrors id="accept" errors={failed ? [failed.says] : undefined} />
    </form>
  );
}

function WhoWears({ wearer }: { readonly wearer: "self" | "child" }) {
  return (
    <Field
      id="accept-wearer"
      label="Who wears the garment"
      hint="If it is somebody else, ask them first: their measurements, and photos of the garment on them, are theirs."
    >
      <Select id="accept-wearer" name="wearer" defaultValue={wearer} aria-describedby={describedBy("accept-wearer")}>
        <option value="self">I do</option>
        <option value="adult">Another adult, who agrees</option>
        <option value="child">A child; a parent or guardian agrees</option>
      </Select>
    </Field>
  );
}

function AgreeAnew({ agreement: { version, text } }: { readonly agreement: { version: number; text: string } }) {
  return (
    <section aria-labelledby="accept-agreement" className="mb-5">
      <h3 id="accept-agreement" className="mb-1 text-base font-semibold">
        What you agree to
      </h3>
      <div dir="auto" className="mb-2 whitespace-pre-wrap wrap-anywhere">
        {text}
      </div>
      <label className="flex min-h-11 cursor-pointer items-center gap-3">
        <input type="checkbox" name="agreed" value={version} required className="size-5 shrink-0 accent-thread" />I
        agree to this.
      </label>
    </section>
  );
}

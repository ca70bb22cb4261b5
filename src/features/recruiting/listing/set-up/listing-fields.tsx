import type { FocusEvent } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { bodyField, NOTICE_FIELDS, type AskableMeasurement } from "../field-names";
import type { ListingFormState } from "./listing-form-state";
import { usualDeadlines } from "../usual-days-computed";
import { SpotFields, type SpotAdvice } from "./spot-fields";
import { ChoiceField, DayField, LineField, TextField, ZoneField } from "./typed-field";

/** What the form shows besides what was typed. */
export interface ListingContent {
  readonly sizes: readonly { readonly id: string; readonly label: string; readonly made: string }[];
  readonly body: readonly AskableMeasurement[];
  readonly craft: PatternDocument["craft"];
  readonly advice: SpotAdvice;
}

interface ListingFieldsProps extends ListingContent {
  readonly state: ListingFormState;
}

/** All fields of a listing, section by section. */
export function ListingFields({ state, sizes, body, craft, advice }: ListingFieldsProps) {
  return (
    <>
      <Section title="The test">
        <Sheet className="pb-1 sm:pb-1">
          <LineField state={state} name="title" label="Title" />
          <TextField
            state={state}
            name="introduction"
            label="Introduction (optional)"
            hint="What the garment is, and which testers you are looking for."
          />
        </Sheet>
      </Section>
      <Section title="Sizes and testers">
        <Sheet>
          <SpotFields state={state} sizes={sizes} advice={advice} />
        </Sheet>
      </Section>
      <Section
        title="Dates"
        intro="Everybody sees them in your time zone and in their own. A deadline ends at midnight."
      >
        <DayFields state={state} craft={craft} />
      </Section>
      <Section title="The work">
        <WorkFields state={state} />
      </Section>
      <Section title="Applications">
        <ApplicationFields state={state} body={body} />
      </Section>
      <Section
        title="Agreement"
        intro="Everybody who applies agrees to this text; the version and the time are recorded. If you change the text, the new version applies to everybody who applies after that."
      >
        <Sheet className="pb-1 sm:pb-1">
          <AgreementFields state={state} />
        </Sheet>
      </Section>
      <Section
        title="Privacy notice"
        intro="What applicants and testers read about their data. Sizewright writes what it stores and who sees it; you say the rest. It is a help and not legal advice: the law where you live decides what your notice must say."
      >
        <NoticeFields state={state} />
      </Section>
    </>
  );
}

const SHARING = [
  { value: "", label: "only as the text says" },
  { value: "never", label: "not at all" },
  { value: "release", label: "once the pattern is released" },
  { value: "any", label: "at any time" },
];

function AgreementFields({ state }: Pick<ListingFieldsProps, "state">) {
  return (
    <>
      <TextField state={state} name="agreement" label="What testers agree to" rows={7} />
      <p className="mb-4 max-w-3xl text-soft">
        What you choose here is added to the text as sentences, with one that the pattern’s text, charts and numbers are
        never shown.
      </p>
      <div className="grid items-start gap-x-6 sm:grid-cols-2">
        <ChoiceField state={state} name="progressPhotos" label="Testers may show work in progress" choices={SHARING} />
        <ChoiceField
          state={state}
          name="finishedPhotos"
          label="Testers may show the finished garment"
          choices={SHARING}
        />
      </div>
      <p className="mb-4 max-w-3xl text-sm text-soft">
        Sizewright records who agreed to which text. It gives no legal advice: what an agreement may say, and what it is
        worth, is decided by the law where you and your testers live.
      </p>
    </>
  );
}

function NoticeFields({ state }: Pick<ListingFieldsProps, "state">) {
  return (
    <Sheet className="grid gap-x-6 pb-1 sm:grid-cols-2 sm:pb-1">
      <LineField
        state={state}
        name={NOTICE_FIELDS.responsible}
        label="Who is responsible"
        hint="Your name or your business; in many countries with a postal address."
      />
      <LineField
        state={state}
        name={NOTICE_FIELDS.contact}
        label="How to reach them"
        hint="For example an e-mail address. Everybody can read it."
      />
      <LineField
        state={state}
        name={NOTICE_FIELDS.minimumAge}
        numeric
        label="Minimum age of testers"
        hint="18 or more."
      />
      <LineField
        state={state}
        name={NOTICE_FIELDS.monthsStored}
        numeric
        label="Months after the end"
        hint="So long after you close the test, Sizewright deletes names, addresses, measurements, photos and words of testers by itself. You are told 30 days before."
      />
      <div className="sm:col-span-2">
        <TextField
          state={state}
          name={NOTICE_FIELDS.more}
          label="What else the notice says (optional)"
          hint="For example the authority that people can complain to."
          rows={3}
        />
      </div>
    </Sheet>
  );
}

function DayFields({ state, craft }: Pick<ListingFieldsProps, "state" | "craft">) {
  const fillDeadlines = ({ target }: FocusEvent<HTMLDivElement>) => {
    if (!(target instanceof HTMLInputElement) || target.name !== "startOn") return;
    for (const [name, day] of Object.entries(usualDeadlines(target.value, craft) ?? {})) {
      const deadline = target.form?.elements.namedItem(name);
      if (deadline instanceof HTMLInputElement && deadline.value === "") deadline.value = day;
    }
  };
  return (
    <Sheet className="pb-1 sm:pb-1">
      <div onBlur={fillDeadlines} className="grid gap-x-6 sm:grid-cols-2">
        <div className="sm:col-span-2 sm:max-w-sm">
          <ZoneField state={state} name="timeZone" label="Time zone" hint="Region and city, such as Europe/Lisbon." />
        </div>
        <DayField state={state} name="applyUntil" label="Last day to apply" />
        <DayField state={state} name="startOn" label="Testers start on" />
        <DayField state={state} name="swatchBy" label="Swatches by" hint="Usually a week after the start." />
        <DayField
          state={state}
          name="reportBy"
          label="Reports by"
          hint={`Usually ${craft === "crochet" ? "4 weeks" : "6 to 8 weeks"} after the start.`}
        />
        <DayField
          state={state}
          name="releaseOn"
          label="Pattern released on (optional)"
          hint="As planned. The release itself counts: testers are told when you mark a version as published."
        />
      </div>
    </Sheet>
  );
}

function WorkFields({ state }: Pick<ListingFieldsProps, "state">) {
  return (
    <Sheet className="pb-1 sm:pb-1">
      <TextField state={state} name="asks" label="What testers do and send" />
      <div className="grid gap-x-6 sm:grid-cols-2">
        <TextField state={state} name="yarn" label="Yarn (optional)" />
        <TextField state={state} name="tools" label="Needle or hook (optional)" />
      </div>
      <TextField
        state={state}
        name="gives"
        label="What testers get"
        hint="For example the finished pattern, yarn, a fee or their name in the pattern. If nothing, say so."
        rows={3}
      />
    </Sheet>
  );
}

const ASKED = [
  { value: "", label: "not asked for" },
  { value: "asked", label: "asked for" },
];
const DECIDES = { value: "fit", label: "asked for, decides the size" };

function ApplicationFields({
  state,
  body,
}: {
  readonly state: ListingFormState;
  readonly body: readonly AskableMeasurement[];
}) {
  return (
    <Sheet className="pb-1 sm:pb-1">
      <p className="mb-4 max-w-3xl text-soft">
        Body measurements are private: only you and this pattern’s helpers see them. Ask only for those you need.
      </p>
      <div className="grid items-start gap-x-6 sm:grid-cols-2 lg:grid-cols-3">
        {body.map(({ id, label, decides }) => (
          <ChoiceField
            key={id}
            state={state}
            name={bodyField(id)}
            label={label}
            hint={decides ? undefined : "Not every size has this measurement, so it cannot decide the size."}
            choices={decides ? [...ASKED, DECIDES] : ASKED}
          />
        ))}
      </div>
      <LineField
        state={state}
        name="mostApplications"
        numeric
        label="Maximum number of applications (optional)"
        hint="When it is reached, nobody else can apply. Leave empty for no limit."
      />
    </Sheet>
  );
}

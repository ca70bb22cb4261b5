import { Section } from "@/ui/section";
import type { AskedOfApplicants } from "./apply-answer";
import { EXPERIENCE_WORDS, TERMS_WORDS } from "./apply-copy";
import { WhoSees } from "../who-sees";
import { AgreementFields } from "./agreement-fields";
import type { Answered } from "./answered";
import { BodyFields } from "./body-fields";
import { ChoiceField } from "./choice-field";
import { SizeFields } from "./size-fields";
import { LineField, TextField } from "./text-fields";

interface ApplyFieldsProps {
  readonly callId: string;
  readonly asked: AskedOfApplicants;
  readonly answered: Answered;
  readonly craft: "crochet" | "knitting";
  readonly designer: string;
}

/** All fields of an application, in their order. */
export function ApplyFields({ callId, asked, answered, craft, designer }: ApplyFieldsProps) {
  return (
    <>
      <Section title="You">
        <LineField
          field="name"
          label="Name"
          hint="What the designer should call you."
          autoComplete="name"
          {...{ answered }}
        />
        <LineField
          field="email"
          label="E-mail"
          type="email"
          hint="So that the designer can reach you. Each person can apply once."
          autoComplete="email"
          answered={answered}
        />
      </Section>
      <Section
        title="Measurements"
        intro="Measure the body that the garment is for, today, with a tape over light clothes. There are no wrong measurements."
      >
        <BodyFields asked={asked.body} answered={answered} />
      </Section>
      <Section title="Sizes">
        <SizeFields sizes={asked.sizes} answered={answered} />
      </Section>
      <Section title="How you work">
        <MaterialFields answered={answered} craft={craft} />
      </Section>
      <Section title="Agreement">
        <AgreementFields agreement={asked.agreement} minimumAge={asked.minimumAge} answered={answered} />
      </Section>
      <Section title="Who sees this">
        <WhoSees {...{ callId, designer }}>
          <li>
            You get a page of your own where you can read everything that is stored, withdraw your application or delete
            it. Deleting removes your name, e-mail address, measurements and answers for good.
          </li>
        </WhoSees>
      </Section>
    </>
  );
}

function MaterialFields({ answered, craft }: Pick<ApplyFieldsProps, "answered" | "craft">) {
  const tool = craft === "crochet" ? "hook" : "needles";
  return (
    <>
      <TextField
        field="yarn"
        label="Yarn you would use (optional)"
        hint="Name, weight and fibre, or “not chosen yet”."
        answered={answered}
      />
      <LineField
        field="tool"
        label={`${craft === "crochet" ? "Hook" : "Needles"} you would use (optional)`}
        hint={`The size of your ${tool} in mm, and the material if you like.`}
        autoComplete="off"
        answered={answered}
      />
      <ChoiceField
        field="terms"
        label={craft === "crochet" ? "Stitch names you use" : "Knitting terms you use"}
        hint={
          craft === "crochet"
            ? "US single crochet (sc) is UK double crochet (dc)."
            : "US patterns say “gauge” and “bind off”, UK patterns “tension” and “cast off”."
        }
        choices={[
          { value: "us", label: TERMS_WORDS.us },
          { value: "uk", label: TERMS_WORDS.uk },
        ]}
        answered={answered}
      />
      <ChoiceField
        field="experience"
        label="Testing experience"
        isStacked
        choices={Object.entries(EXPERIENCE_WORDS).map(([value, label]) => ({ value, label }))}
        answered={answered}
      />
      <LineField
        field="handle"
        label="Social media (optional)"
        hint="Where you show what you make: a user name or a web address."
        autoComplete="off"
        answered={answered}
      />
      <TextField
        field="pastWork"
        label="What you have made (optional)"
        hint="A garment or a test that you would like the designer to know about."
        answered={answered}
      />
    </>
  );
}

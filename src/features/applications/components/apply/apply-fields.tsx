import { Section } from "@/ui/section";
import type { AskedOfApplicants } from "../../apply-form";
import { EXPERIENCE_WORDS, TERMS_WORDS } from "../../apply-words";
import { WhoSees } from "../who-sees";
import { AgreementFields } from "./agreement-fields";
import type { Answered } from "./answered";
import { BodyFields } from "./body-fields";
import { ChoiceField } from "./choice-field";
import { SizeFields } from "./size-fields";
import { LineField, TextField } from "./text-fields";

interface ApplyFieldsProps {
  readonly asked: AskedOfApplicants;
  readonly answered: Answered;
  readonly craft: "crochet" | "knitting";
  readonly designer: string;
}

/** All that an applicant is asked, in the order in which she is asked it. */
export function ApplyFields({ asked, answered, craft, designer }: ApplyFieldsProps) {
  return (
    <>
      <Section title="You">
        <LineField
          field="name"
          label="Name"
          hint="As the designer should call you."
          autoComplete="name"
          {...{ answered }}
        />
        <LineField
          field="email"
          label="E-mail"
          type="email"
          hint="So that the designer can reach you. One application a person."
          autoComplete="email"
          answered={answered}
        />
      </Section>
      <Section
        title="Measurements"
        intro="Of the body that it is to fit, today’s, taken with a tape over light clothes. Nobody’s are wrong."
      >
        <BodyFields asked={asked.body} answered={answered} />
      </Section>
      <Section title="Sizes">
        <SizeFields sizes={asked.sizes} answered={answered} />
      </Section>
      <Section title="How you work">
        <HowSheWorks answered={answered} craft={craft} />
      </Section>
      <Section title="Agreement">
        <AgreementFields agreement={asked.agreement} answered={answered} />
      </Section>
      <Section title="Who sees this">
        <WhoSees designer={designer}>
          <li>
            You get a page of your own where you read all that is kept, withdraw, or delete it. Deleted is deleted:
            name, e-mail address, measurements and words go.
          </li>
        </WhoSees>
      </Section>
    </>
  );
}

function HowSheWorks({ answered, craft }: Pick<ApplyFieldsProps, "answered" | "craft">) {
  const tool = craft === "crochet" ? "hook" : "needles";
  return (
    <>
      <TextField
        field="yarn"
        label="Yarn that I would use (optional)"
        hint="Name, weight and what it is made of, or “not chosen yet”."
        answered={answered}
      />
      <LineField
        field="tool"
        label={`${craft === "crochet" ? "Hook" : "Needles"} that I would use (optional)`}
        hint={`Size of the ${tool} in mm, and what it is made of if you like.`}
        autoComplete="off"
        answered={answered}
      />
      <ChoiceField
        field="terms"
        label={craft === "crochet" ? "Stitch names that I read" : "Words that I read patterns in"}
        hint={
          craft === "crochet"
            ? "What is single crochet (sc) in US names is double crochet (dc) in UK names."
            : "US patterns say gauge and bind off, UK patterns tension and cast off."
        }
        choices={[
          { value: "us", label: TERMS_WORDS.us },
          { value: "uk", label: TERMS_WORDS.uk },
        ]}
        answered={answered}
      />
      <ChoiceField
        field="experience"
        label="Testing"
        isStacked
        choices={Object.entries(EXPERIENCE_WORDS).map(([value, label]) => ({ value, label }))}
        answered={answered}
      />
      <LineField
        field="handle"
        label="Handle (optional)"
        hint="Where you show what you make, such as your name there or an address."
        autoComplete="off"
        answered={answered}
      />
      <TextField
        field="pastWork"
        label="What I have made (optional)"
        hint="A garment or a test that you would like the designer to know of."
        answered={answered}
      />
    </>
  );
}

import { formatLength } from "@/ui/format-length";
import { EXPERIENCE_WORDS, TERMS_WORDS, WEARER_WORDS } from "../apply/apply-copy";
import { bodyLabel } from "../apply/asked-of-applicants";
import type { OwnApplication } from "./own-data";
import { Fact, Facts } from "../fact";

/** Everything that is stored about an application. */
export function StoredList({ application }: { readonly application: OwnApplication }) {
  const { name, email, pattern, measurements, typed, document } = application;
  const sizes = (ids: readonly string[]) => ids.map((id) => sizeLabel(pattern, id)).join(", ");
  return (
    <Facts>
      <Fact label="Name">{name}</Fact>
      <Fact label="E-mail">{email}</Fact>
      {Object.entries(measurements).map(([id, cm]) => (
        <Fact key={id} label={bodyLabel(pattern, id)}>
          <span className="numbers">
            {typed[id] ? `“${typed[id]}”, read as ` : ""}
            {formatLength(cm, "cm")} ({formatLength(cm, "in")})
          </span>
        </Fact>
      ))}
      <Fact label="Whose measurements">{document.forAnother ? "Somebody else’s" : "Your own"}</Fact>
      {document.wearer === undefined ? null : <Fact label="Who wears it">{WEARER_WORDS[document.wearer]}</Fact>}
      <Fact label="Sizes">{document.accepts === null ? "Any that fits" : sizes(document.accepts)}</Fact>
      <Fact label="Preferred, in this order">{sizes(document.prefers)}</Fact>
      <Fact label="Yarn">{document.yarn}</Fact>
      <Fact label="Needle or hook">{document.tool}</Fact>
      <Fact label="Terms and unit">
        {TERMS_WORDS[document.terms]}, {document.unit === "in" ? "inches" : "centimetres"}
      </Fact>
      <Fact label="Testing experience">{EXPERIENCE_WORDS[document.experience]}</Fact>
      <Fact label="Social media">{document.handle}</Fact>
      <Fact label="What you have made">{document.pastWork}</Fact>
      <Fact label="Time zone">{document.timeZone ?? "not given"}</Fact>
      <Fact label="18 or over">Yes</Fact>
    </Facts>
  );
}

/** A size's name; its id if the pattern no longer has it. */
export function sizeLabel({ sizes }: OwnApplication["pattern"], sizeId: string): string {
  return sizes.find(({ id }) => id === sizeId)?.label ?? sizeId;
}

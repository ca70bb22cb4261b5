import type { ReactNode } from "react";
import { formatLength } from "@/ui/format-length";
import { EXPERIENCE_WORDS, TERMS_WORDS } from "../../apply-words";
import { bodyLabel } from "../../asked-of-applicants";
import type { OwnApplication } from "../../own-data";

/** All that is kept of an application, word for word. */
export function KeptList({ application }: { readonly application: OwnApplication }) {
  const { name, email, pattern, measurements, typed, document } = application;
  const sizes = (ids: readonly string[]) => ids.map((id) => sizeLabel(pattern, id)).join(", ");
  return (
    <dl className="divide-y divide-line rounded-sheet border border-line bg-sheet shadow-sheet">
      <Kept label="Name">{name}</Kept>
      <Kept label="E-mail">{email}</Kept>
      {Object.entries(measurements).map(([id, cm]) => (
        <Kept key={id} label={bodyLabel(pattern, id)}>
          <span className="numbers">
            “{typed[id] ?? ""}”, read as {formatLength(cm, "cm")} ({formatLength(cm, "in")})
          </span>
        </Kept>
      ))}
      <Kept label="Whose measurements">{document.forAnother ? "Somebody else’s" : "Your own"}</Kept>
      <Kept label="Sizes">{document.accepts === null ? "Any within reach" : sizes(document.accepts)}</Kept>
      <Kept label="Rather, in this order">{sizes(document.prefers)}</Kept>
      <Kept label="Yarn">{document.yarn}</Kept>
      <Kept label="Tool">{document.tool}</Kept>
      <Kept label="Names and unit">
        {TERMS_WORDS[document.terms]}, {document.unit === "in" ? "inches" : "centimetres"}
      </Kept>
      <Kept label="Testing">{EXPERIENCE_WORDS[document.experience]}</Kept>
      <Kept label="Handle">{document.handle}</Kept>
      <Kept label="What you have made">{document.pastWork}</Kept>
      <Kept label="Time zone">{document.timeZone ?? ""}</Kept>
      <Kept label="18 or over">Yes, you said so.</Kept>
    </dl>
  );
}

/** A size's name; its id where the pattern has it no more. */
export function sizeLabel({ sizes }: OwnApplication["pattern"], sizeId: string): string {
  return sizes.find(({ id }) => id === sizeId)?.label ?? sizeId;
}

function Kept({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="gap-x-6 px-5 py-2.5 sm:grid sm:grid-cols-[11rem_1fr]">
      <dt className="text-sm text-soft sm:text-base">{label}</dt>
      <dd className="min-w-0 whitespace-pre-wrap wrap-anywhere">
        {children === "" ? <span className="text-soft">nothing</span> : <bdi>{children}</bdi>}
      </dd>
    </div>
  );
}

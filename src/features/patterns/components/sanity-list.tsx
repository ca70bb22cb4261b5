import { sanityRemarks, type SanityRemark } from "@/engine/sanity";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { Section } from "@/ui/section";

interface SanityListProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
}

/** Questions that a technical editor would ask; each may be intentional. */
export function SanityList({ pattern, unit }: SanityListProps) {
  const remarks = sanityRemarks(pattern, (cm) => formatLength(cm, unit));
  if (remarks.length === 0) return null;
  return (
    <Section
      title="Questions from a technical edit"
      intro="Each of these may be intentional. You can save without changing them."
    >
      <ul className="grid gap-3">
        {remarks.map((remark) => (
          <Remark key={`${remark.kind} ${remark.path} ${remark.says}`} remark={remark} />
        ))}
      </ul>
    </Section>
  );
}

function Remark({ remark: { kind, says } }: { readonly remark: SanityRemark }) {
  return (
    <li className="max-w-3xl border-l-4 border-line-strong pl-4">
      <p className="text-sm font-semibold text-soft">{ABOUT[kind]}</p>
      <p className="wrap-anywhere">{says}</p>
    </li>
  );
}

const ABOUT: Readonly<Record<SanityRemark["kind"], string>> = {
  "sleeve-and-armhole": "Sleeve and armhole",
  "neck-and-head": "Neck and head",
  "ease-and-stretch": "Ease and stretch",
  "step-and-body": "Steps between sizes",
  "coarse-repeat": "Repeat and tolerance",
  gauge: "Gauge",
  "size-order": "Order of sizes",
};

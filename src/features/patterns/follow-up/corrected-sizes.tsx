import type { PatternDocument } from "@/engine/pattern";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { withdrawSigned } from "./follow-up-actions";
import { retestGroups } from "./retest-copy";
import type { CorrectedSizeStanding } from "./retest-data";
import { SignOffForm } from "./sign-off-form";

interface CorrectedSizesProps {
  readonly patternId: string;
  readonly pattern: Pick<PatternDocument, "sizes" | "measurements">;
  readonly standings: readonly CorrectedSizeStanding[];
  readonly mayEdit: boolean;
  /** The reader's, who may have checked it themselves. */
  readonly ownName: string;
}

/** The corrected sizes: which are to be tested again, which were, and who signed one off. */
export function CorrectedSizes({ patternId, pattern, standings, mayEdit, ownName }: CorrectedSizesProps) {
  if (standings.length === 0) return null;
  const due = pattern.sizes.filter(({ id }) => standings.some(({ size, status }) => size === id && status === "due"));
  return (
    <Section
      title="Corrected sizes"
      intro={
        due.length === 0
          ? undefined
          : "A correction holds once a tester of that size has measured it on the corrected revision. A technical editor can also sign it off."
      }
    >
      <ul className="numbers max-w-3xl divide-y divide-line border-y border-line">
        {retestGroups(standings, pattern).map(({ key, heading, says, status, sizes, revisionNumber }) => (
          <li key={key} className="py-2 wrap-anywhere">
            <span aria-hidden="true">{SIGNS[status]}</span>{" "}
            <b className={status === "retested" ? "font-normal" : "font-semibold"}>{heading}</b>: {says}
            {mayEdit && status === "checked" ? (
              <OneButtonForm
                action={withdrawSigned}
                sends={{ patternId, sizes: sizes.join(","), revisionNumber: String(revisionNumber) }}
                button="Take the signature back"
                waiting="One moment …"
                about={heading}
                look="plain"
              />
            ) : null}
          </li>
        ))}
      </ul>
      {mayEdit && due.length > 0 ? (
        <SignOffForm
          key={due.map(({ id }) => id).join()}
          {...{ patternId, ownName }}
          sizes={due.map(({ id, label }) => ({ id, label }))}
        />
      ) : null}
    </Section>
  );
}

const SIGNS = { due: "○", checked: "✓", off: "▲", retested: "✓" } as const;

import { chosenField, LEAVE } from "./chosen-field";
import type { Alternative, Proposal, Way } from "./proposals";

interface ProposalCardProps {
  readonly proposal: Proposal;
  readonly index: number; /** The chosen value; null for those who may only view. */
  readonly chosen: string | null;
}

/** One named cause: what was found, and what can be done about it. */
export function ProposalCard({ proposal, index, chosen }: ProposalCardProps) {
  const { sentence, explains, moved } = proposal;
  return (
    <li className="rounded-sheet border border-line border-l-4 border-l-thread bg-sheet p-5 shadow-sheet sm:p-6">
      <div className="grid gap-x-10 gap-y-5 lg:grid-cols-[5fr_6fr]">
        <div className="numbers min-w-0 wrap-anywhere">
          <h3 className="text-xl leading-snug">{sentence}</h3>
          {moved === "" ? null : <p className="mt-3">Effect: {moved}</p>}
          <p className="mt-2 text-sm text-soft">{explains}</p>
        </div>
        {chosen === null ? (
          <Rivals proposal={proposal} />
        ) : (
          <fieldset className="min-w-0">
            <legend className="mb-2 font-semibold">What do you want to change?</legend>
            <p className="mb-3 text-sm text-soft">{proposal.because}</p>
            <Choices proposal={proposal} index={index} chosen={chosen} />
          </fieldset>
        )}
      </div>
    </li>
  );
}

function Choices({
  proposal,
  index,
  chosen,
}: {
  readonly proposal: Proposal;
  readonly index: number;
  readonly chosen: string;
}) {
  const { alternatives, tellApart } = proposal;
  const name = chosenField(index);
  const near = alternatives.filter(({ likeness }) => likeness === "near");
  const sure = alternatives.filter(({ likeness }) => likeness !== "near");
  return (
    <>
      {tellApart === null ? null : (
        <p className="mb-3 text-sm">
          <strong>It is one of these.</strong> {tellApart}
        </p>
      )}
      {sure.map((alternative) => (
        <Ways key={alternative.name} {...{ alternative, name, chosen }} named={sure.length > 1} />
      ))}
      {near.length === 0 ? null : (
        <details className="my-2" open={near.some(({ ways }) => ways.some(({ value }) => value === chosen))}>
          <summary className="min-h-6 py-1 text-sm text-thread underline underline-offset-4">
            Nearly as likely: {near.map((alternative) => alternative.name).join("; ")}
          </summary>
          <div className="mt-2">
            {near.map((alternative) => (
              <Ways key={alternative.name} {...{ alternative, name, chosen }} named />
            ))}
          </div>
        </details>
      )}
      <Choice name={name} chosen={chosen} way={{ value: LEAVE, label: "Leave it as it is", detail: "" }} />
    </>
  );
}

interface WaysProps {
  readonly alternative: Alternative;
  readonly name: string;
  readonly chosen: string;
  readonly named: boolean;
}

function Ways({ alternative, name, chosen, named }: WaysProps) {
  return (
    <div className={named ? "mb-3" : ""}>
      {named ? <p className="text-sm font-semibold">If it is {alternative.name}:</p> : null}
      {alternative.ways.map((way) => (
        <Choice key={way.value} {...{ name, chosen, way }} />
      ))}
    </div>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly chosen: string;
  readonly way: Pick<Way, "value" | "label" | "detail">;
}

function Choice({ name, chosen, way }: ChoiceProps) {
  return (
    <label className="flex min-h-11 cursor-pointer gap-3 rounded-md px-2 py-2 has-checked:bg-band">
      <input
        type="radio"
        name={name}
        value={way.value}
        defaultChecked={way.value === chosen}
        className="mt-1 size-5 shrink-0 accent-thread"
      />
      <span className="min-w-0 wrap-anywhere">
        {way.label}
        {way.detail === "" ? null : <span className="block text-sm text-soft">{way.detail}</span>}
      </span>
    </label>
  );
}

/** For those who may only view. */
function Rivals({ proposal }: { readonly proposal: Proposal }) {
  const [, ...others] = proposal.alternatives;
  if (others.length === 0) return null;
  return (
    <div className="text-sm text-soft">
      <p>
        It could equally be{" "}
        {others.map(({ name, likeness }) => `${name}${likeness === "near" ? " (nearly as likely)" : ""}`).join(" or ")}.
      </p>
      {proposal.tellApart === null ? null : <p className="mt-2">{proposal.tellApart}</p>}
    </div>
  );
}

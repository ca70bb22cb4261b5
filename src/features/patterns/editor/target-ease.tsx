"use client";

import { oneForAllSizes, spreadOverSizes, type Typed } from "@/engine/editing";
import { ownValue } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ChoiceField, NumberField, TickField } from "./fields";
import { GridArea } from "./grid-area";
import { bodyChoices, type BodyTarget, type TargetEdit, withTypedSizes } from "./target-kinds";
import { signOf, withoutSign, withSign } from "./term-sign";

/** A body measurement or a share of it, plus or minus ease. */
export function TargetEase({ target, index, measurement, onTarget }: TargetEdit<BodyTarget>) {
  const { pattern } = useEditing("pattern");
  const { share, easeCm } = target;
  const path = ["measurements", index, "target"] as const;
  const setShare = (text: string) => {
    const { share: _before, ...rest } = target;
    onTarget(text.trim() === "" ? rest : { ...rest, share: text }, "share");
  };
  const isBySize = typeof easeCm === "object";
  return (
    <div className="grid gap-3">
      <div className="flex flex-wrap items-start gap-x-2 gap-y-3">
        <NumberField
          at={[...path, "share"]}
          label="Multiply by"
          placeholder="1"
          className="w-20"
          value={share}
          onText={setShare}
        />
        <span className="pt-8.5 text-soft" aria-hidden="true">
          ×
        </span>
        <div className="w-56 max-w-full">
          <ChoiceField
            at={[...path, "body"]}
            label="Body measurement"
            value={target.body}
            choices={bodyChoices(pattern)}
            onChoice={(body) => onTarget({ ...target, body }, null)}
          />
        </div>
        {isBySize ? null : (
          <Ease
            at={[...path, "easeCm"]}
            question={`measurements.${measurement}.target.easeCm`}
            label="Ease"
            labelled="above"
            value={easeCm}
            onEase={(value, field) => onTarget({ ...target, easeCm: value }, field)}
          />
        )}
      </div>
      <p className="-mt-1 text-sm text-soft">
        Use 0.5 for half of the body, such as a width measured flat. Leave it empty for the whole.
      </p>
      <TickField
        label="different ease by size"
        checked={isBySize}
        onTick={(ticked) =>
          onTarget(
            { ...target, easeCm: ticked ? spreadOverSizes(pattern, easeCm) : oneForAllSizes(pattern, easeCm) },
            null,
          )
        }
      />
      {isBySize ? (
        <EaseBySize target={target} index={index} measurement={measurement} onTarget={onTarget} easeCm={easeCm} />
      ) : null}
    </div>
  );
}

interface EaseBySizeProps extends TargetEdit<BodyTarget> {
  readonly easeCm: Readonly<Record<string, Typed>>;
}

function EaseBySize({ target, index, measurement, onTarget, easeCm }: EaseBySizeProps) {
  const { pattern } = useEditing("pattern");
  const set = (next: Readonly<Record<string, Typed>>, field: string | null) =>
    onTarget({ ...target, easeCm: next }, field);
  return (
    <GridArea onBlock={(block, row) => set(withTypedSizes(pattern, easeCm, { texts: block.flat(), from: row }), null)}>
      <ol className="grid grid-cols-[repeat(auto-fill,minmax(min(100%,21rem),1fr))] gap-x-6 gap-y-2">
        {pattern.sizes.map(({ id, label }, row) => (
          <li key={id} data-row={row} data-column={0} className="flex items-start gap-2">
            <span className="w-12 shrink-0 py-2.5 font-semibold wrap-anywhere">{label}</span>
            <Ease
              at={["measurements", index, "target", "easeCm", id]}
              question={`measurements.${measurement}.target.easeCm.${id}`}
              label={`Ease in ${label}`}
              labelled="aloud"
              value={ownValue(easeCm, id) ?? ""}
              onEase={(value, field) => set({ ...easeCm, [id]: value }, field && `${field}.${id}`)}
            />
          </li>
        ))}
      </ol>
    </GridArea>
  );
}

const OVER_OR_UNDER = [
  { value: "1", label: "over the body" },
  { value: "-1", label: "under it" },
];

interface EaseProps {
  readonly at: readonly (string | number)[];
  readonly question: string;
  readonly label: string;
  readonly labelled: "above" | "aloud";
  readonly value: Typed;
  readonly onEase: (value: Typed, field: string | null) => void;
}

function Ease({ at, question, label, labelled, value, onEase }: EaseProps) {
  const { unit } = useEditing("unit");
  return (
    <div className="flex items-start gap-1.5">
      <NumberField
        at={at}
        label={label}
        labelled={labelled}
        kind="length"
        question={question}
        behind={unit}
        value={withoutSign(value)}
        onText={(text) => onEase(withSign(text, signOf(value)), "easeCm")}
      />
      <div className={labelled === "above" ? "pt-5.5" : ""}>
        <ChoiceField
          at={[...at, "sign"]}
          label={`${label}: over or under the body`}
          labelled="aloud"
          className="w-34"
          value={String(signOf(value))}
          choices={OVER_OR_UNDER}
          onChoice={(sign) => onEase(withSign(withoutSign(value), sign === "-1" ? -1 : 1), null)}
        />
      </div>
    </div>
  );
}

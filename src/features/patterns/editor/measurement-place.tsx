"use client";

import type { Typed } from "@/engine/editing";
import { viewsInSize } from "../computed";
import { fullWidthCm } from "../drawing/line-path";
import { ViewDrawing } from "../drawing/view-drawing";
import { useEditing } from "./editing";
import { ChoiceField, NumberField } from "./fields";
import type { DraftMeasurement, MeasurementEdit } from "./measurement-edit";

type Place = Extract<NonNullable<DraftMeasurement["on"]>, { readonly piece: string }>;
type End = "from" | "to";

/** Across the middle of the piece, from side to side. */
const ACROSS = { from: [0, 0.5], to: [1, 0.5] } satisfies Omit<Place, "piece">;

const ENDS = [
  { end: "from", label: "Starts at" },
  { end: "to", label: "Ends at" },
] as const;

/** Where the measurement is on the schematic. */
export function MeasurementPlace({ measurement, i, onMeasurement }: MeasurementEdit) {
  const { pattern } = useEditing("pattern");
  const { on: placed, ...rest } = measurement;
  const on = placed && "piece" in placed ? placed : undefined;
  const head = `place-${measurement.id}`;
  const set = (next: Place, field: string | null) => onMeasurement({ ...rest, on: next }, field && `on.${field}`);
  return (
    <section aria-labelledby={head} className="grid gap-3">
      <h4 id={head} className="font-serif text-lg font-semibold">
        Place on the schematic
      </h4>
      <div className="max-w-md">
        <ChoiceField
          at={["measurements", i, "on", "piece"]}
          label="Piece"
          value={on?.piece ?? ""}
          nothing={placed && on === undefined ? "From edge to edge" : "Not on the schematic"}
          choices={pattern.garment.pieces.map(({ id, label }) => ({ value: id, label: label || id }))}
          onChoice={(piece) => onMeasurement(piece === "" ? rest : { ...rest, on: { ...ACROSS, ...on, piece } }, null)}
        />
      </div>
      {on ? <PlaceFields on={on} index={i} onPlace={set} /> : null}
      {on ? <PlaceDrawn measurement={measurement.id} piece={on.piece} /> : null}
    </section>
  );
}

interface PlaceFieldsProps {
  readonly on: Place;
  readonly index: number;
  readonly onPlace: (next: Place, field: string | null) => void;
}

function PlaceFields({ on, index, onPlace }: PlaceFieldsProps) {
  const setEnd = (end: End, [across, up]: readonly [Typed, Typed], field: string) =>
    onPlace({ ...on, [end]: [across, up] }, `${end}.${field}`);
  return (
    <>
      <div className="flex flex-wrap gap-x-8 gap-y-3">
        {ENDS.map(({ end, label }) => {
          const [across, up] = on[end];
          return (
            <fieldset key={end} className="flex flex-wrap items-start gap-x-3 gap-y-2">
              <legend className="text-sm font-semibold">{label}</legend>
              <NumberField
                at={["measurements", index, "on", end, 0]}
                label="across"
                value={across}
                onText={(text) => setEnd(end, [text, up], "0")}
              />
              <NumberField
                at={["measurements", index, "on", end, 1]}
                label="up"
                value={up}
                onText={(text) => setEnd(end, [across, text], "1")}
              />
            </fieldset>
          );
        })}
      </div>
      <p className="text-sm text-soft">
        Across: 0 is the left edge of the piece, 1 the right. Up: 0 is the lower edge, 1 the upper.
      </p>
    </>
  );
}

/** The piece in the chosen size, with only this measurement. */
function PlaceDrawn({ measurement: id, piece: on }: { readonly measurement: string; readonly piece: string }) {
  const { readable, size, pattern } = useEditing("readable", "size", "pattern");
  const views = readable && viewsInSize(readable, size).pieces;
  const view = views?.find(({ piece, tapes }) => piece === on && tapes.some(({ measurement }) => measurement === id));
  const nameOf = (items: readonly { readonly id: string; readonly label: string }[], sought: string) =>
    items.find((each) => each.id === sought)?.label ?? sought;
  if (view === undefined)
    return <p className="text-sm text-soft">Complete the piece and this measurement to see the schematic.</p>;
  return (
    <div className="max-w-72">
      <ViewDrawing
        view={view}
        title={`${nameOf(pattern.garment.pieces, on)} in ${nameOf(pattern.sizes, size)}`}
        fullWidthCm={fullWidthCm([view.box])}
        litMeasurement={id}
        onlyMeasurements={new Set([id])}
      />
    </div>
  );
}

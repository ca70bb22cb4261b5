import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { ALL_SIZES } from "./choose-sizes";
import { GarmentSection } from "./garment-section";
import { fullWidthCm } from "./line-path";
import { PickedUpEdges } from "./picked-up-edges";
import { pieceBoards, viewsOf, type PieceBoard } from "./piece-board";
import { PieceInAllSizes, PieceInSize } from "./piece-in-size";
import { StepFaults } from "./step-faults";

interface PiecesViewProps {
  readonly pattern: PatternDocument;
  /** One size, or all of them. */
  readonly sizes: readonly Size[];
  readonly isAllSizes: boolean;
  readonly unit: LengthUnit;
  /** Address of the pattern. */
  readonly home: string;
}

/** The pieces of a pattern to scale, with the shaping of each part. */
export function PiecesView({ pattern, sizes, isAllSizes, unit, home }: PiecesViewProps) {
  const boards = pieceBoards(pattern);
  const here = `${home}/pieces`;
  const [size] = sizes;
  const asked = isAllSizes ? ALL_SIZES : (size?.id ?? ALL_SIZES);
  const shown = size ?? pattern.sizes[0];
  return (
    <>
      {shown ? (
        <GarmentSection pattern={pattern} size={shown} unit={unit} print={`${home}/drawing.svg?size=${shown.id}`} />
      ) : null}
      <Section
        title={isAllSizes ? "Pieces in all sizes" : `Pieces in ${size?.label}`}
        actions={
          <a href={`${home}/drawing.svg?size=${asked}`} className="text-link">
            Print schematics
          </a>
        }
      >
        <div className="mb-5">
          <SizeChoice pattern={pattern} here={here} asked={asked} />
        </div>
        <StepFaults boards={boards} here={here} />
        <PieceList pattern={pattern} boards={boards} size={isAllSizes ? null : (size ?? null)} unit={unit} />
      </Section>
      <PickedUpEdges pattern={pattern} sizes={sizes} />
    </>
  );
}

interface SizeChoiceProps {
  readonly pattern: PatternDocument;
  readonly here: string;
  readonly asked: string;
}

function SizeChoice({ pattern: { sizes }, here, asked }: SizeChoiceProps) {
  const choices = [...sizes, { id: ALL_SIZES, label: "All sizes" }];
  return (
    <ChoiceLinks
      label="Size"
      choices={choices.map(({ id, label }) => ({ href: `${here}?size=${id}`, label, current: id === asked }))}
    />
  );
}

interface PieceListProps {
  readonly pattern: PatternDocument;
  readonly boards: readonly PieceBoard[];
  /** Null: all of them. */
  readonly size: Size | null;
  readonly unit: LengthUnit;
}

function PieceList({ pattern, boards, size, unit }: PieceListProps) {
  const sizes = size === null ? pattern.sizes : [size];
  const width = fullWidthCm(boards.flatMap((board) => viewsOf(board, sizes).map(({ box }) => box)));
  return (
    <ul className="grid grid-cols-1 gap-6">
      {boards.map((board) => (
        <li key={board.piece.id}>
          {size === null ? (
            <PieceInAllSizes pattern={pattern} board={board} unit={unit} fullWidthCm={width} />
          ) : (
            <PieceInSize pattern={pattern} board={board} size={size} unit={unit} fullWidthCm={width} />
          )}
        </li>
      ))}
    </ul>
  );
}

/** Shown where the pattern has no pieces. */
export function NoPieces({ home, mayEdit }: { readonly home: string; readonly mayEdit: boolean }) {
  return (
    <EmptyState
      title="No pieces yet"
      actions={mayEdit ? <ButtonLink href={`${home}/edit`}>Add pieces</ButtonLink> : null}
    >
      <p>
        A piece is a part of the garment, such as the body or a sleeve. With pieces, this page shows schematics of every
        size to scale and the shaping of each part, and Sizewright can calculate the yarn of every size.
      </p>
      {mayEdit ? null : <p className="mt-2">The owner or an editor can add them.</p>}
    </EmptyState>
  );
}

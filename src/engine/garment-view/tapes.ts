import type { WorkedGarment } from "../garment";
import type { PatternDocument } from "../pattern";
import { finishedMeasurements } from "../prediction";
import type { Place } from "./line";
import type { Tape } from "./view";
import type { WornPiece } from "./worn-piece";

type Bare = Omit<Tape, "letterAt">;

/** Of a pattern they are worked out once for all of its sizes. */
const known = new WeakMap<PatternDocument, ReturnType<typeof finishedMeasurements>>();

/** Finished measurements of a pattern in a size, by id. */
export function finishedCm(pattern: PatternDocument, size: string): ReadonlyMap<string, number | null> {
  const finished = known.get(pattern) ?? finishedMeasurements(pattern);
  known.set(pattern, finished);
  return new Map(
    finished.map(({ measurement, sizes }) => [
      measurement.id,
      sizes.find((entry) => entry.size === size)?.designCm ?? null,
    ]),
  );
}

/**
 * Where the tape is laid for each measurement that has a place, in the worn coordinates of the first copy of its piece.
 *
 * @returns by piece id. A measurement whose edges lie on two pieces, or are not worked, is left out.
 */
export function tapesOf(
  pattern: PatternDocument,
  {
    worked,
    worn,
    finished,
  }: {
    readonly worked: WorkedGarment;
    readonly worn: ReadonlyMap<string, readonly WornPiece[]>;
    readonly finished: ReadonlyMap<string, number | null>;
  },
): Map<string, Bare[]> {
  const found = new Map<string, Bare[]>();
  for (const { id, letter, label, on } of pattern.measurements) {
    const ends = on && ("piece" in on ? endsOnPiece(on, worn) : endsOnEdges(on, worked, worn));
    if (!ends) continue;
    const tapes = found.get(ends.piece) ?? [];
    tapes.push({ measurement: id, letter, label, cm: finished.get(id) ?? null, from: ends.from, to: ends.to });
    found.set(ends.piece, tapes);
  }
  return found;
}

type On = NonNullable<PatternDocument["measurements"][number]["on"]>;

function endsOnPiece(on: Extract<On, { piece: string }>, worn: ReadonlyMap<string, readonly WornPiece[]>) {
  const box = worn.get(on.piece)?.[0]?.box;
  if (box === undefined) return null;
  const at = ([across, up]: readonly [number, number]): Place => [
    box.leftCm + across * (box.rightCm - box.leftCm),
    box.bottomCm + up * (box.topCm - box.bottomCm),
  ];
  return { piece: on.piece, from: at(on.from), to: at(on.to) };
}

function endsOnEdges(
  on: Exclude<On, { piece: string }>,
  worked: WorkedGarment,
  worn: ReadonlyMap<string, readonly WornPiece[]>,
) {
  const [from, to] = [on.from, on.to].map(([edge, share]) => {
    const line = worked.edgeLine({ edge });
    const piece = worked.pieceOfEdge(edge);
    const move = piece && worn.get(piece)?.[0]?.move;
    return line && piece && move
      ? {
          piece,
          at: move(
            alongLine(
              line.map(({ xCm, yCm }) => [xCm, yCm]),
              share,
            ),
          ),
        }
      : null;
  });
  return from && to && from.piece === to.piece ? { piece: from.piece, from: from.at, to: to.at } : null;
}

/** The place at a share of the length of a line. */
function alongLine(places: readonly Place[], share: number): Place {
  const lengths = places
    .slice(1)
    .map(([x, y], index) => Math.hypot(x - (places[index]?.[0] ?? x), y - (places[index]?.[1] ?? y)));
  let leftCm = share * lengths.reduce((sum, cm) => sum + cm, 0);
  for (const [index, cm] of lengths.entries()) {
    const [from, to] = [places[index], places[index + 1]];
    if (from === undefined || to === undefined) break;
    if (leftCm <= cm || index === lengths.length - 1) {
      const part = cm === 0 ? 0 : Math.min(1, leftCm / cm);
      return [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])];
    }
    leftCm -= cm;
  }
  return places[0] ?? [0, 0];
}

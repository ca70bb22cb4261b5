import Link from "next/link";
import { Notice } from "@/ui/notice";
import { partName } from "./part-list";
import { stepFaults } from "./step-list";
import { isPlanned, type PartInSize, type PieceBoard } from "./piece-board";

/** Which parts cannot be worked as described, in which sizes; each size links to its schematic. */
export function PartFaults({ boards, here }: { readonly boards: readonly PieceBoard[]; readonly here: string }) {
  const faulty = boards.flatMap(({ piece, parts, steps, shapes }) => [
    ...steps.flatMap((worked, index) => {
      const sizes = shapes.filter(({ size }) => stepFaults(worked, [size]).length > 0);
      return sizes.length === 0 ? [] : [{ name: `${piece.label}, step ${index + 1}`, sizes, of: shapes.length }];
    }),
    ...parts.flatMap((part, index) => {
      const sizes = part.filter((inSize) => !isPlanned(inSize));
      return sizes.length === 0 ? [] : [{ name: partName(piece.label, index, parts.length), sizes, of: part.length }];
    }),
  ]);
  if (faulty.length === 0) return null;
  return (
    <Notice title="Some parts cannot be worked as described">
      <ul className="mt-1 grid gap-1">
        {faulty.map(({ name, sizes, of }, index) => (
          <li key={index} className="wrap-anywhere">
            {name}: {sizes.length === of && of > 1 ? "in every size" : <SizeLinks sizes={sizes} here={here} />}
          </li>
        ))}
      </ul>
    </Notice>
  );
}

function SizeLinks({ sizes, here }: { readonly sizes: readonly Pick<PartInSize, "size">[]; readonly here: string }) {
  return sizes.map(({ size }, index) => (
    <span key={size.id}>
      {index === 0 ? "in " : ", "}
      <Link href={`${here}?size=${size.id}`} className="text-link">
        {size.label}
      </Link>
    </span>
  ));
}

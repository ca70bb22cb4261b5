import Link from "next/link";
import type { LoadedBoard } from "../loaders";
import type { PlacesFrame } from "./places-frame";

/** Who is not considered at all, and why: no word, a no, a maybe, a body that is not known. */
export function LeftOut({ loaded, frame }: { readonly loaded: LoadedBoard; readonly frame: PlacesFrame }) {
  const { board, side, people } = loaded;
  const { fitBy, withdrawn } = board;
  const { withoutBody } = side;
  const says = countWords(loaded);
  if (says.length === 0 && withoutBody.many === 0 && withdrawn === 0) return null;
  return (
    <div className="-mt-6 mb-12 text-sm text-soft">
      {says.length > 0 ? (
        <p>
          Not considered: {says.join(", ")}. Say yes, maybe or no on{" "}
          <Link href={`/calls/${frame.callId}/applications`} className="text-link">
            Applications
          </Link>
          .
        </p>
      ) : null}
      {withoutBody.first.map(({ application, missing }) => (
        <p key={application} className="wrap-anywhere">
          <bdi className="font-semibold">{people.nameOf(application)}</bdi> cannot be placed: no{" "}
          {missing.map((id) => (frame.measurements[fitBy.indexOf(id)] ?? id).toLowerCase()).join(" and no ")} is known.
        </p>
      ))}
      {withoutBody.many > withoutBody.first.length ? (
        <p>So it is with {withoutBody.many - withoutBody.first.length} more.</p>
      ) : null}
      {withdrawn > 0 ? <p>{withdrawn} of those who applied withdrew.</p> : null}
    </div>
  );
}

function countWords({ board: { words }, considering }: LoadedBoard): string[] {
  const counts = [
    { many: words.none, of: "without a word of yours" },
    { many: considering === "yes" ? words.maybe : 0, of: "with a maybe" },
    { many: words.no, of: "with a no" },
  ];
  return counts.filter(({ many }) => many > 0).map(({ many, of }) => `${many} ${of}`);
}

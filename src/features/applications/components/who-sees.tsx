/** Who gets to see an application, and what becomes of it. */
export function WhoSees({ designer }: { readonly designer: string }) {
  return (
    <ul className="list-disc space-y-1.5 pl-5 wrap-anywhere">
      <li>
        <bdi className="font-semibold">{designer}</bdi>, whose call this is, sees all of it: name, e-mail address,
        measurements and what you write. So do the helpers to whom <bdi>{designer}</bdi> has given leave to work on this
        pattern. Nobody else does: no other applicant, and no other designer.
      </li>
      <li>The measurements serve to find a size for you, and nothing else.</li>
      <li>
        You get a page of your own where you read all that is kept, withdraw, or delete it. Deleted is deleted: name,
        e-mail address, measurements and words go.
      </li>
    </ul>
  );
}

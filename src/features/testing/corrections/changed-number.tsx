interface ChangedNumberProps {
  readonly was: string | number;
  readonly becomes: string | number;
  /** It is the reader's own among those of all sizes. */
  readonly isOwn?: boolean;
}

/** A number that is wrong, struck out, and the right one beside it; screen readers are told which is which. */
export function ChangedNumber({ was, becomes, isOwn = false }: ChangedNumberProps) {
  return (
    <>
      <del className="text-soft">
        <span className="sr-only">{isOwn ? "wrong for your size: " : "wrong: "}</span>
        {was}
      </del>{" "}
      <ins className="font-semibold text-ink no-underline">
        <span className="sr-only">right: </span>
        {isOwn ? <mark>{becomes}</mark> : becomes}
      </ins>
    </>
  );
}

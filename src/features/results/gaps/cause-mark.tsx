/** The number of a cause that explains the cell, the same as beside the cause. */
export function CauseMark({ number }: { readonly number: number }) {
  return (
    <span className="cause-mark">
      <span className="sr-only">explained by cause </span>
      {number}
    </span>
  );
}

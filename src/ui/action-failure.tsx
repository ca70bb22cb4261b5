interface ActionFailureProps {
  /** What failed; left out while nothing has. */
  readonly failed: { readonly says: string } | undefined;
  /** Its place among what stands around it. */
  readonly className?: string;
}

/** Why an action failed, beside its button, announced when it appears. */
export function ActionFailure({ failed, className = "mt-2" }: ActionFailureProps) {
  if (failed === undefined) return null;
  return (
    <p role="alert" className={`text-sm font-semibold text-thread wrap-anywhere ${className}`}>
      <span aria-hidden="true">▲ </span>
      {failed.says}
    </p>
  );
}

import type { ComponentProps, ReactNode } from "react";

interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint?: ReactNode;
  readonly errors?: readonly string[];
  readonly children: ReactNode;
}

/** A labelled control with its hint and its errors; the control takes `describedBy(id)`. */
export function Field({ id, label, hint, errors, children }: FieldProps) {
  return (
    <div className="mb-5">
      <label htmlFor={id} className="mb-1 block font-semibold">
        {label}
      </label>
      {hint ? (
        <div id={`${id}-hint`} className="mb-1.5 text-sm text-soft">
          {hint}
        </div>
      ) : null}
      {children}
      <FieldErrors id={id} errors={errors} />
    </div>
  );
}

/** Sentences beside a control, announced when they appear. */
export function FieldErrors({ id, errors }: { readonly id: string; readonly errors?: readonly string[] }) {
  return (
    <div id={`${id}-error`} aria-live="polite">
      {errors?.map((error) => (
        <p key={error} className="mt-1.5 flex gap-2 text-sm font-semibold text-thread">
          <span aria-hidden="true">▲</span>
          {error}
        </p>
      ))}
    </div>
  );
}

/** Value for `aria-describedby` of a control inside a `Field`. */
export function describedBy(id: string): string {
  return `${id}-hint ${id}-error`;
}

export function TextInput({ className = "", ...rest }: ComponentProps<"input">) {
  return <input className={`control min-h-11 ${className}`} {...rest} />;
}

export function TextArea({ className = "", ...rest }: ComponentProps<"textarea">) {
  return <textarea className={`control ${className}`} {...rest} />;
}

export function Select({ className = "", ...rest }: ComponentProps<"select">) {
  return <select className={`control min-h-11 ${className}`} {...rest} />;
}

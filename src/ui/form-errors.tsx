import { Notice } from "./notice";

/** Errors of a form as a whole. */
export function FormErrors({ errors }: { readonly errors?: readonly string[] }) {
  return errors?.map((error) => (
    <Notice key={error} tone="problem">
      {error}
    </Notice>
  ));
}

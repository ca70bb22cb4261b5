"use client";

import { useFormStatus } from "react-dom";
import { Button, type ButtonLook } from "./button";

interface SubmitButtonProps {
  readonly children: string;
  /** What it says while the form is on its way. */
  readonly waiting: string;
  readonly look?: ButtonLook;
}

/** Sends the form it stands in; says so, and cannot be pressed twice. */
export function SubmitButton({ children, waiting, look }: SubmitButtonProps) {
  const { pending } = useFormStatus();
  return (
    <Button type="submit" look={look} disabled={pending} aria-live="polite">
      {pending ? waiting : children}
    </Button>
  );
}

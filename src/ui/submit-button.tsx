"use client";

import { useFormStatus } from "react-dom";
import { Button, type ButtonLook } from "./button";

interface SubmitButtonProps {
  readonly children: string;
  /** Label while the form is being sent. */
  readonly waiting: string;
  readonly look?: ButtonLook;
}

/** Sends its form; shows that, and cannot be pressed twice. */
export function SubmitButton({ children, waiting, look }: SubmitButtonProps) {
  const { pending } = useFormStatus();
  return (
    <Button type="submit" look={look} disabled={pending} aria-live="polite">
      {pending ? waiting : children}
    </Button>
  );
}

import type { ReactNode } from "react";
import { ButtonLink } from "@/ui/button";

/** The page that follows a step. */
export interface NextPage {
  readonly page: string;
  readonly href: string;
  readonly label: string;
}

interface StepBarProps {
  /** The way to the next step. */
  readonly next: ReactNode;
  /** What is saved. */
  readonly status?: ReactNode;
  /** What a page without scripts has besides. */
  readonly withoutScripts?: ReactNode;
}

/** At the bottom of the screen: what is saved, and the way to the next step. */
export function StepBar({ next, status, withoutScripts }: StepBarProps) {
  return (
    <div className="step-bar">
      {status}
      {withoutScripts}
      {next}
    </div>
  );
}

/** The same on a page without a form: the way on alone; nothing after the last page. */
export function NextBar({ next }: { readonly next: NextPage | null }) {
  return next === null ? null : <StepBar next={<ButtonLink href={next.href}>{`Next: ${next.label}`}</ButtonLink>} />;
}

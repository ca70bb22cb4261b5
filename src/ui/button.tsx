import Link from "next/link";
import type { ButtonHTMLAttributes, ReactNode } from "react";

export type ButtonLook = "main" | "quiet" | "plain";

const SHAPE =
  "inline-flex min-h-11 items-center justify-center gap-2 rounded-md py-2 text-base font-semibold leading-tight transition-colors disabled:cursor-not-allowed disabled:opacity-55";

const LOOKS: Readonly<Record<ButtonLook, string>> = {
  main: "px-5 bg-thread text-white hover:bg-thread-dark",
  quiet: "px-5 border border-line-strong bg-sheet text-ink hover:border-ink hover:bg-paper",
  plain: "px-2 text-thread underline decoration-1 underline-offset-4 hover:text-thread-dark hover:decoration-2",
};

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly look?: ButtonLook;
}

export function Button({ look = "main", className = "", type = "button", ...rest }: ButtonProps) {
  return <button type={type} className={`${SHAPE} ${LOOKS[look]} ${className}`} {...rest} />;
}

/** A link that looks like a button: it leads somewhere and changes nothing. */
export function ButtonLink({
  href,
  look = "main",
  children,
}: {
  readonly href: string;
  readonly look?: ButtonLook;
  readonly children: ReactNode;
}) {
  return (
    <Link href={href} className={`${SHAPE} ${LOOKS[look]}`}>
      {children}
    </Link>
  );
}

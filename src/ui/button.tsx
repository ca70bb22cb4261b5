import Link from "next/link";
import type { ButtonHTMLAttributes, ReactNode } from "react";

export type ButtonLook = "main" | "quiet" | "plain";

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly look?: ButtonLook;
}

export function Button({ look = "main", className = "", type = "button", ...rest }: ButtonProps) {
  return <button type={type} className={`button button-${look} ${className}`} {...rest} />;
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
    <Link href={href} className={`button button-${look}`}>
      {children}
    </Link>
  );
}

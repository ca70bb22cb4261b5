"use client";

import { useRouter } from "next/navigation";
import type { MouseEvent, ReactNode } from "react";

interface LinkAreaProps {
  readonly className?: string;
  readonly children: ReactNode;
}

/** Many plain links that lead within the app without loading a page anew: for dozens, next/link takes the server long. */
export function LinkArea({ className, children }: LinkAreaProps) {
  const router = useRouter();
  const onClick = (event: MouseEvent) => {
    if (
      event.defaultPrevented ||
      event.button !== 0 ||
      event.metaKey ||
      event.ctrlKey ||
      event.shiftKey ||
      event.altKey
    )
      return;
    const link = event.target instanceof Element ? event.target.closest("a") : null;
    if (link === null || link.origin !== location.origin) return;
    event.preventDefault();
    router.push(link.pathname + link.search + link.hash);
  };
  return (
    <div className={className} onClick={onClick}>
      {children}
    </div>
  );
}

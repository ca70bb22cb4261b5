"use client";

import { useEffect, useRef } from "react";
import { LinkArea } from "./link-area";

interface NavTab {
  readonly href: string;
  readonly label: string;
  readonly current: boolean;
}

interface NavTabsProps {
  readonly label: string;
  readonly tabs: readonly NavTab[];
  /** `parts` over `pages`, where there are two levels. */
  readonly look?: "parts" | "pages";
}

/** Links between the pages of one thing, in one line; where they do not fit it scrolls, with the current one in sight. */
export function NavTabs({ label, tabs, look = "parts" }: NavTabsProps) {
  const list = useRef<HTMLUListElement>(null);
  const current = tabs.find((tab) => tab.current)?.href;
  useEffect(() => {
    const link = list.current?.querySelector<HTMLElement>("[aria-current]");
    if (list.current && link)
      list.current.scrollLeft = link.offsetLeft - (list.current.clientWidth - link.offsetWidth) / 2;
  }, [current]);
  return (
    <nav aria-label={label} className={`nav-tabs nav-${look}`}>
      <LinkArea>
        <ul ref={list}>
          {tabs.map(({ href, label: text, current: isCurrent }) => (
            <li key={href}>
              <a href={href} aria-current={isCurrent ? "page" : undefined}>
                {text}
              </a>
            </li>
          ))}
        </ul>
      </LinkArea>
    </nav>
  );
}

import { ButtonLink } from "./button";
import type { PageOfList } from "./page-number";

interface PagingProps extends Pick<PageOfList, "page" | "pages"> {
  /** Name of the list for screen readers: "Pages of applications". */
  readonly label: string;
  readonly hrefOf: (page: number) => string;
}

/** Links to the previous and next page of a list; nothing where there is only one. */
export function Paging({ label, page, pages, hrefOf }: PagingProps) {
  if (pages === 1) return null;
  return (
    <nav aria-label={label} className="mt-6 flex flex-wrap items-center gap-4">
      {page > 1 ? (
        <ButtonLink href={hrefOf(page - 1)} look="quiet">
          Previous
        </ButtonLink>
      ) : null}
      <span className="text-soft">
        Page {page} of {pages}
      </span>
      {page < pages ? (
        <ButtonLink href={hrefOf(page + 1)} look="quiet">
          Next
        </ButtonLink>
      ) : null}
    </nav>
  );
}
